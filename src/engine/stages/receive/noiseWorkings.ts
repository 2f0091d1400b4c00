import type { NoiseClassKey } from '../../data/noiseClasses.ts';
import { noiseFormula } from '../../data/noiseFormula.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import { type BlockKey, blocksOf } from './blocks.ts';
import type { receiveFields } from './fields.ts';
import { BOLTZMANN, REFERENCE_TEMPERATURE, SIGNAL_FOR_TEN } from './noise.ts';
import { milliwatt, s9, sUnits, sum } from './referenceLevels.ts';
import { DB_PER_UNIT } from './sReports.ts';

const friis = 'H. T. Friis, Noise figures of radio receivers, Proc. IRE 32, 1944, p. 419';
const nine = {
  value: SIGNAL_FOR_TEN,
  unit: '1',
  says: 'signal over noise that makes (S+N)/N ten decibels',
} as const;

const thermal = {
  k: { value: BOLTZMANN, unit: 'J/K', says: 'Boltzmann’s constant, exact', source: 'SI brochure' },
  T_0: { value: REFERENCE_TEMPERATURE, unit: 'K', says: 'reference temperature' },
  B_n: 'filter.noiseBandwidth',
  P_ref: milliwatt,
  L_kTB: {
    formula: '10 * log10(k * T_0 * B_n / P_ref)',
    unit: 'dBm',
    says: 'thermal noise in this bandwidth',
  },
} as const satisfies Record<string, Bound>;

/** Each block's gain and noise figure: formula, symbol, and where the symbol comes from. */
const blocks: Readonly<
  Record<BlockKey, { gain: string; noise: string; name: string; path?: string }>
> = {
  network: { gain: '-L_n', noise: 'L_n', name: 'L_n' },
  front: { gain: '-L_front', noise: 'L_front', name: 'L_front', path: 'receive.frontLoss' },
  third: { gain: 'G_3', noise: 'NF_amp', name: 'G_3', path: 'transmit.thirdGain' },
  bandPass: { gain: '-A_bp', noise: 'A_bp', name: 'A_bp', path: 'front.loss' },
  mixer: { gain: '-A_mix', noise: 'A_mix', name: 'A_mix', path: 'convert.mixerLoss' },
  first: { gain: 'G_amp', noise: 'NF_amp', name: 'G_amp', path: 'transmit.amplifierGain' },
  filter: { gain: '-L_fil', noise: 'L_fil', name: 'L_fil', path: 'filter.loss' },
  second: { gain: 'G_amp', noise: 'NF_amp', name: 'G_amp', path: 'transmit.amplifierGain' },
  detector: { gain: '-L_det', noise: 'L_det', name: 'L_det', path: 'receive.detectorLoss' },
  preamp: { gain: 'A_pre', noise: 'NF_pre', name: 'A_pre', path: 'receive.preampGain' },
};

const orderOf = (look: Look): readonly BlockKey[] =>
  blocksOf({
    scheme: look('plan.scheme') as string,
    thirdServes: look('receive.thirdServes') as string,
    thirdGain: look('transmit.thirdGain') as number | null,
  });

/** The loss of the output network where the signal comes in through it. */
function network(look: Look): Bound {
  if (look('receive.throughNetwork') === 'no') {
    return { value: 0, unit: 'dB', says: 'the signal doesn’t come in through the output network' };
  }
  return look('output.loss') === null ? 'transmit.network' : 'output.loss';
}

function symbols(look: Look, keys: readonly BlockKey[]): Record<string, Bound> {
  const where: Record<string, Bound> = {};
  for (const key of keys) {
    const { name, path } = blocks[key];
    where[name] = path ?? network(look);
  }
  return where;
}

const gainSum = (keys: readonly BlockKey[]): string =>
  keys
    .map((key) => blocks[key].gain)
    .map((gain) => (gain.startsWith('-') ? `- ${gain.slice(1)}` : `+ ${gain}`))
    .join(' ')
    .replace(/^\+ /, '')
    .replace(/^- /, '-');

/** The chain's noise factor term by term, with each block's gain and noise as plain ratios. */
function friisWorking(look: Look): Working {
  const order = orderOf(look);
  const where: Record<string, Bound> = {
    ...symbols(look, order.slice(0, -1)),
    NF_amp: 'transmit.amplifierNoise',
    NF_pre: 'receive.preampNoise',
  };
  const terms = order.map((key, i) => {
    if (i > 0) {
      where[`g_${i}`] = {
        formula: `10^((${gainSum(order.slice(0, i))}) / 10)`,
        unit: '1',
        says: 'gain before the next block, as a ratio',
      };
    }
    const twice = key === 'second' ? '2 * ' : '';
    return `${twice}(10^(${blocks[key].noise} / 10) - 1)${i === 0 ? '' : ` / g_${i}`}`;
  });
  return {
    says: 'Each block adds its own noise, divided by all the gain before it.',
    formula: `10 * log10(1 + ${terms.join(' + ')})`,
    where,
    source: friis,
    assumes:
      'Impedances match. The noise of the amplifier behind the filter is heard on both sides of the carrier and counts twice.',
  };
}

/** Rows whose gain or noise figure is one field. */
function rowOf(look: Look, index: number, what: 'gain' | 'noise'): Working {
  const key = orderOf(look)[index] ?? 'network';
  const formula = blocks[key][what];
  const own: Record<string, Bound> =
    formula === 'NF_amp'
      ? { NF_amp: 'transmit.amplifierNoise' }
      : formula === 'NF_pre'
        ? { NF_pre: 'receive.preampNoise' }
        : symbols(look, [key]);
  return {
    says:
      what === 'gain'
        ? 'What this block does to the signal.'
        : 'An amplifier’s own; a passive block at 290 K has its loss.',
    formula,
    where: own,
    source: sum,
  };
}

type NoiseKey =
  | 'chain.block'
  | 'chain.gain'
  | 'chain.noise'
  | 'chain.before'
  | 'chain.share'
  | 'chain.level'
  | 'frontGain'
  | 'noiseFigure'
  | 'floor'
  | 'sensitivity'
  | 'sensitivityVolts'
  | 'sensitivityEmf'
  | 'external'
  | 'bandNoise'
  | 'externalHere'
  | 'bandHere'
  | 'margin'
  | 'sets'
  | 'noiseRise'
  | 'attenuator'
  | 'weakest'
  | 'weakestUnits';

/** From the antenna to the detector: gain and noise. */
export const noiseWorkings: Pick<StageWorkings<typeof receiveFields>, NoiseKey> = {
  'chain.block': {
    says: 'The blocks that a signal passes.',
    rule: 'A fixed list.',
    where: {},
    source: 'definition',
  },
  'chain.gain': (look, index) => rowOf(look, index, 'gain'),
  'chain.noise': (look, index) => rowOf(look, index, 'noise'),
  'chain.before': (look, index) =>
    index === 0
      ? {
          says: 'Nothing lies before the first block.',
          formula: '0',
          where: {},
          source: sum,
        }
      : {
          says: 'All gains and losses from the antenna to this block.',
          formula: gainSum(orderOf(look).slice(0, index)),
          where: symbols(look, orderOf(look).slice(0, index)),
          source: sum,
        },
  'chain.share': (look, index) => ({
    says: 'Its own noise, divided by the gain before it, against the noise factor of the whole.',
    formula: 'k_s * (10^(NF_row / 10) - 1) / 10^(G_before / 10) / 10^(NF / 10)',
    where: {
      k_s:
        orderOf(look)[index] === 'second'
          ? { value: 2, unit: '1', says: 'heard on both sides of the carrier' }
          : { value: 1, unit: '1', says: 'heard once' },
      NF_row: 'row.noise',
      G_before: 'row.before',
      NF: 'receive.noiseFigure',
    },
    source: friis,
  }),
  'chain.level': {
    says: 'S9 at the antenna and all gain up to here.',
    formula: 'L_9 + G_before + G_row',
    where: { L_9: s9, G_before: 'row.before', G_row: 'row.gain' },
    source: sUnits,
  },
  frontGain: (look) => ({
    says: 'All gains and losses from the antenna to the detector’s output.',
    formula: gainSum(orderOf(look).slice(0, -1)),
    where: symbols(look, orderOf(look).slice(0, -1)),
    source: sum,
  }),
  noiseFigure: (look) => friisWorking(look),
  floor: {
    says: 'Thermal noise in the filter’s noise bandwidth, raised by the noise figure.',
    formula: 'L_kTB + NF',
    where: { ...thermal, NF: 'receive.noiseFigure' },
    source: 'definition of the noise figure',
  },
  sensitivity: {
    says: 'Signal nine times the noise: then signal and noise together are ten times the noise.',
    formula: 'L_floor + 10 * log10(s_10)',
    where: { L_floor: 'receive.floor', s_10: nine },
    source: 'definition of (S+N)/N',
  },
  sensitivityVolts: {
    says: 'The voltage of that power across the antenna resistance.',
    formula: 'sqrt(P_ref * 10^(L_10 / 10) * R_ant)',
    where: { P_ref: milliwatt, L_10: 'receive.sensitivity', R_ant: 'plan.antenna' },
    source: 'closed form: P = V²/R',
    assumes: 'The receiver’s input matches the antenna.',
  },
  sensitivityEmf: {
    says: 'A matched load halves the generator’s open voltage.',
    formula: '2 * V_10',
    where: { V_10: 'receive.sensitivityVolts' },
    source: 'voltage divider',
  },
  external: (look) => {
    const storms = typeof look('receive.atmospheric') === 'number';
    const { says, formula, where, source } = noiseFormula(
      look('receive.place') as NoiseClassKey,
      storms,
      look('plan.nominal') as number,
    );
    return {
      says,
      formula,
      where: {
        ...(storms ? { F_at: 'receive.atmospheric' } : {}),
        ...where,
        f_0: 'plan.nominal',
      },
      source,
      assumes:
        'A median: half the time and half the places are quieter. A short vertical antenna without loss.',
    };
  },
  bandNoise: {
    says: 'Thermal noise in the filter’s noise bandwidth, raised by the external noise figure.',
    formula: 'L_kTB + F_am',
    where: { ...thermal, F_am: 'receive.external' },
    source: 'ITU-R P.372',
  },
  externalHere: (look) => {
    const made = typeof look('antenna.efficiency') === 'number';
    return {
      says: 'Antenna and line take as much of the noise as of a signal; in its place they put a resistor’s.',
      formula: '10 * log10(10^(F_am / 10) * l_a + 1 - l_a)',
      where: {
        F_am: 'receive.external',
        A_l: 'feed.loss',
        ...(made ? { eta: 'antenna.efficiency' } : {}),
        l_a: {
          formula: `${made ? 'eta * ' : ''}10^(-A_l / 10)`,
          unit: '1',
          says: 'what is left behind antenna and line',
        },
      },
      source: 'ITU-R P.372, noise figure of a receiving system',
      assumes: made
        ? 'Antenna and line are at 290 K.'
        : 'Nothing is known of the antenna’s own loss: none. The line is at 290 K.',
    };
  },
  bandHere: {
    says: 'Thermal noise in the filter’s noise bandwidth, raised by what is left of the noise from outside.',
    formula: 'L_kTB + F_rx',
    where: { ...thermal, F_rx: 'receive.externalHere' },
    source: 'ITU-R P.372',
  },
  margin: {
    says: 'The two noises compared, both at the antenna terminal.',
    formula: 'L_bh - L_floor',
    where: { L_bh: 'receive.bandHere', L_floor: 'receive.floor' },
    source: sum,
  },
  sets: {
    says: 'Ten decibels either way decide; in between both count.',
    formula: 'M_N >= 10 ? "band" : M_N > -10 ? "both" : "receiver"',
    where: { M_N: 'receive.margin' },
    source: 'common practice, no source',
  },
  noiseRise: {
    says: 'Noise with the antenna over noise with a resistor of 290 K.',
    formula: '10 * log10((10^(F_rx / 10) + 10^(NF / 10) - 1) / 10^(NF / 10))',
    where: { F_rx: 'receive.externalHere', NF: 'receive.noiseFigure' },
    source: 'closed form from the definition of the noise figure',
  },
  attenuator: {
    says: 'The loss that raises the noise figure until the band’s noise is nine times the receiver’s.',
    formula: '10 * log10((10^(F_rx / 10) - 1) / (9 * 10^(NF / 10)))',
    where: { F_rx: 'receive.externalHere', NF: 'receive.noiseFigure' },
    source: 'closed form: the noise rise set to ten decibels',
  },
  weakest: {
    says: 'Nine times the noise of band and receiver together.',
    formula: '10 * log10(s_10 * (10^(L_floor / 10) + 10^(L_bh / 10)))',
    where: { s_10: nine, L_floor: 'receive.floor', L_bh: 'receive.bandHere' },
    source: 'definition of (S+N)/N; powers of independent noises add',
  },
  weakestUnits: {
    says: 'S9 is −73 dBm, and a unit is 6 dB.',
    formula: '9 + (L_weak - L_9) / d_S',
    where: {
      L_weak: 'receive.weakest',
      L_9: s9,
      d_S: { value: DB_PER_UNIT, unit: 'dB', says: 'a unit', source: sUnits },
    },
    source: sUnits,
  },
};
