import { stages } from './stages.ts';

/** Sheets that consist of several leaves; all others are one leaf. */
const several: Readonly<Record<string, readonly string[]>> = {
  quartz: ['quartz', 'measure', 'sweep', 'bag'],
  filter: ['filter', 'ends', 'yield', 'compare'],
  carrier: ['carrier', 'drift', 'convert', 'front', 'products'],
  transmit: ['transmit', 'amplifiers', 'power', 'supply'],
  output: ['output', 'suggest', 'mismatch'],
  receive: ['receive', 'loudness', 'strong'],
  path: ['path', 'antenna', 'feed', 'day', 'hear', 'speech'],
  windings: ['windings', 'transformers', 'cores'],
};

/** Leaves that only a rig with conversion has. */
const withConversion = new Set(['convert', 'front', 'products']);

/** A leaf that shows a part of a stage which would be too long for one leaf. */
interface View {
  readonly of: string;
  readonly title: string;
  readonly asks: string;
}

export const views: Readonly<Record<string, View>> = {
  amplifiers: {
    of: 'transmit',
    title: 'Amplifiers',
    asks: 'What do the small stages do, from the microphone to the driver?',
  },
  day: { of: 'path', title: 'Day', asks: 'Which distance is open at which hour?' },
  loudness: {
    of: 'receive',
    title: 'Loudness',
    asks: 'How loud is it, from the weakest station to the strongest?',
  },
  transformers: {
    of: 'windings',
    title: 'Transformers',
    asks: 'How are the transformers and chokes wound?',
  },
};

/**
 * Fields that stand on another leaf than that of their stage: the leaf, and how their names begin.
 * The longest beginning decides.
 */
const elsewhere: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  transmit: {
    amplifiers: [
      'mic',
      'follower',
      'audio',
      'modulator',
      'balance',
      'carrierDrive',
      'conversion',
      'null',
      'pad',
      'amplifier',
      'second',
      'third',
      'coupling',
      'filterDrive',
      'filterSource',
      'driver',
      'post',
      'bias',
      'model',
      'node',
      'own',
    ],
    power: [
      'final',
      'even',
      'straightOn',
      'ratio',
      'match',
      'cycle',
      'peak',
      'most',
      'sanity',
      'sag',
      'overSink',
      'saturation',
      'biasBy',
      'standing',
      'angle',
      'network',
      'collector',
      'operating',
      'conductionAngle',
      'quiescent',
      'dcCurrent',
      'twoTone',
      'supply',
      'efficiency',
      'overall',
      'peakCurrent',
      'fundamental',
      'outputImpedance',
      'currentGain',
      'harmonicCurrents',
      'cooling',
      'sink',
      'contact',
      'junction',
      'speechMean',
      'dissipation',
      'limit',
      'transition',
      'toCase',
      'toAmbient',
      'ownVce',
      'ownIc',
      'ownFt',
      'ownToCase',
      'ownToAmbient',
    ],
    transmit: ['micLevel', 'micGain', 'micFitted'],
  },
  receive: {
    loudness: [
      'preamp',
      'chip',
      'audio',
      'speaker',
      'listening',
      'ears',
      'phones',
      'setFor',
      'setGain',
      'comfort',
      'loudest',
      'loudness',
      'noiseSound',
      'hum',
      'detectorVolts',
      'gain',
    ],
    receive: ['preampNoise'],
  },
  cores: {
    windings: ['former', 'air'],
  },
  windings: {
    transformers: ['transformer', 'modulator', 'reactanceTimes', 'choke'],
    cores: ['coresNeeded'],
  },
};

const worked = new Set(stages.map(({ fields }) => fields.key));
const owner = new Map(
  Object.entries(several).flatMap(([sheet, leaves]) => leaves.map((leaf) => [leaf, sheet])),
);

/** The stage that a leaf is a view of. */
export const stageOf = (leaf: string): string => views[leaf]?.of ?? leaf;

/** The sheet that a leaf belongs to. */
export const sheetOf = (leaf: string): string => owner.get(leaf) ?? leaf;

/** The leaves of a sheet, in the order in which they are turned. */
export const leavesOf = (sheet: string): readonly string[] =>
  (several[sheet] ?? [sheet]).filter((leaf) => worked.has(stageOf(leaf)));

/** The leaf on which a field stands. */
export function leafOf(path: string): string {
  const [stage = '', name = ''] = path.split('.');
  let best = { leaf: stage, length: 0 };
  for (const [leaf, starts] of Object.entries(elsewhere[stage] ?? {})) {
    for (const start of starts) {
      if (start.length > best.length && name.startsWith(start)) {
        best = { leaf, length: start.length };
      }
    }
  }
  return best.leaf;
}

/** Other stages that have fields on a leaf: what they warn of is said there. */
export const guestsOf = (leaf: string): readonly string[] =>
  Object.keys(elsewhere).filter(
    (stage) => stage !== stageOf(leaf) && elsewhere[stage]?.[leaf] !== undefined,
  );

/** All sheets, in the order of the work: a sheet stands where its own stage does. */
export const sheets: readonly string[] = stages
  .map(({ fields }) => fields.key)
  .filter((key) => sheetOf(key) === key);

/** Does a rig of this scheme have the leaf? */
export const hasLeaf = (leaf: string, scheme: unknown): boolean =>
  scheme === 'conversion' || !withConversion.has(leaf);

/** All leaves, in the order in which they are read. */
export const allLeaves: readonly string[] = sheets.flatMap(leavesOf);
