import { ROUND } from '../../circuit/mismatch/aroundCircle.ts';
import type { OutputLadder } from '../../circuit/outputLadder.ts';
import { ruleSets } from '../../data/ruleSets.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import { chainFormula, type Wave } from './chainFormula.ts';
import type { mismatchFields } from './fields.ts';
import { follow } from './followed.ts';
import { goRound, type Round } from './goRound.ts';
import { mismatchReads } from './reads.ts';
import type { MismatchSeen } from './seen.ts';
import {
  finalTerms,
  formulas,
  loadSteps,
  marginSteps,
  reactanceFormula,
  waveTerms,
} from './steps.ts';
import { ratios } from './work.ts';

const circle = 'V = V⁺(1 + Γ), I = V⁺(1 − Γ)/R; any text on transmission lines';
const goneRound = 'The worst of all angles in steps of 5°.';

export const mismatchWorkings: StageWorkings<typeof mismatchFields> = {
  reflection: {
    says: 'How much of the voltage comes back.',
    formula: '(S - 1) / (S + 1)',
    where: { S: 'mismatch.swr' },
    source: 'definition of the standing-wave ratio',
  },
  reflected: {
    says: 'Power goes as the square of the voltage.',
    formula: 'rho^2',
    where: { rho: 'mismatch.reflection' },
    source: 'definition',
  },
  margin: (look) => marginOf(look, typed(look), 'plain', 'mismatch.swr'),
  marginSame: (look) => marginOf(look, typed(look), 'same', 'mismatch.swr'),
  marginAny: (look) => marginOf(look, typed(look), 'any', 'mismatch.swr'),
  marginOrder: (look) => orderOf(typed(look)),
  verdict: (look) =>
    look('mismatch.margin') === null
      ? {
          says: 'The pulse has no harmonic at all.',
          rule: 'Without a harmonic the rule is kept.',
          where: {},
          source: 'the table of harmonics',
        }
      : {
          says: 'Holds with the margin wanted; close without it; fails above the limit.',
          formula: 'M_min < 0 ? "fails" : M_min < M_want ? "close" : "holds"',
          where: { M_min: 'mismatch.margin', M_want: 'output.marginWanted' },
          source: 'this program’s own scale',
        },
  power: (look) => worstOf(look, typed(look), 'power', 'power', 'mismatch.swr'),
  loss: (look) => lossOf(look, typed(look), 'mismatch.swr'),
  collector: (look) => worstOf(look, typed(look), 'unheld', 'collector', 'mismatch.swr'),
  collectorHeld: (look) => worstOf(look, typed(look), 'held', 'held', 'mismatch.swr'),
  heat: (look) => worstOf(look, typed(look), 'heat', 'heat', 'mismatch.swr'),
  'worst.swr': (look, i) => {
    const swr = ratios(look('mismatch.swr') as number)[i] ?? 1;
    return {
      says: 'A usual ratio, or the one typed.',
      formula: 'S',
      where: {
        S:
          swr === look('mismatch.swr')
            ? 'mismatch.swr'
            : { value: swr, unit: '1', says: 'a usual ratio' },
      },
      source: 'common practice, no source',
    };
  },
  'worst.margin': (look, i) => marginOf(look, row(look, i), 'plain', 'row.swr'),
  'worst.marginSame': (look, i) => marginOf(look, row(look, i), 'same', 'row.swr'),
  'worst.marginAny': (look, i) => marginOf(look, row(look, i), 'any', 'row.swr'),
  'worst.marginOrder': (look, i) => orderOf(row(look, i)),
  'worst.marginAngle': (look, i) => angleOf(row(look, i).at.margin, 'the margin is least'),
  'worst.loss': (look, i) => lossOf(look, row(look, i), 'row.swr'),
  'worst.lossAngle': (look, i) => angleOf(row(look, i).at.loss, 'the loss is most'),
  'worst.power': (look, i) => worstOf(look, row(look, i), 'power', 'power', 'row.swr'),
  'worst.powerAngle': (look, i) => angleOf(row(look, i).at.power, 'the power is least'),
  'worst.collector': (look, i) => worstOf(look, row(look, i), 'unheld', 'collector', 'row.swr'),
  'worst.collectorAngle': (look, i) =>
    angleOf(row(look, i).at.collector, 'the collector’s voltage is most'),
  'worst.heat': (look, i) => worstOf(look, row(look, i), 'heat', 'heat', 'row.swr'),
  'worst.heatAngle': (look, i) => angleOf(row(look, i).at.heat, 'the heat is most'),
  'harmonics.order': (look, i) => ({
    says: 'Those that the collector current has.',
    formula: 'n',
    where: {
      n: { value: typed(look).levels[i]?.order ?? 0, unit: '1', says: 'its order' },
    },
    source: 'the list of harmonic currents',
  }),
  'harmonics.back': (look, i) => ({
    says: 'What comes back from the network of a wave that the antenna sends: d over c, the collector’s own resistance included.',
    formula: `${back(look, 'd')} / ${back(look, 'c')}`,
    where: backTerms(look, i),
    source: 'any text on two-ports',
  }),
  'harmonics.same': {
    says: 'The antenna’s reflection at its worst angle against the network’s own.',
    formula: '10 * log10((1 - r^2) / (1 - min(1, rho_n) * r)^2)',
    where: {
      rho: 'mismatch.reflection',
      rho_n: 'row.back',
      r: { formula: 'min(rho, rho_n)', unit: '1', says: 'reflection up to rho that takes most' },
    },
    source: 'mismatch factor; any text on two-ports',
  },
  'harmonics.any': {
    says: 'The power that the network has to give, over what the plain resistance takes.',
    formula: '-10 * log10(1 - rho_n^2)',
    where: { rho_n: 'row.back' },
    source: 'available power; any text on two-ports',
  },
  'around.resistance': (look) => along(look, 'R_in', {}),
  'around.reactance': (look) => along(look, reactanceFormula, {}),
  'around.power': (look) => along(look, formulas.power, finalTerms(look, 'power')),
  'around.loss': (look) =>
    hasParts(look) ? along(look, formulas.loss, finalTerms(look, 'loss')) : noLoss,
  'around.held': (look) => along(look, formulas.held, finalTerms(look, 'held')),
  'around.unheld': (look) => along(look, formulas.unheld, finalTerms(look, 'unheld')),
  'around.heat': (look) => along(look, formulas.heat, finalTerms(look, 'heat')),
  'marginAround.margin': (look, index) => {
    const { margins, around, swr } = typed(look);
    const k = swr === 1 ? 0 : index % ROUND;
    return {
      says: `Limit less level of harmonic ${margins.order[k]}, the nearest to its limit here.`,
      ...marginSteps(
        look,
        { swr: 'mismatch.swr', angle: 'point.angle' },
        { order: margins.order[k] ?? 2, way: 'plain', power: around.power[k] ?? 0 },
      ),
      source: circle,
    };
  },
  'waves.order': {
    says: 'The operating frequency and its multiples.',
    formula: 'index + 1',
    where: { index: 'index' },
    source: 'counting',
  },
  'waves.frequency': {
    says: 'A multiple of the operating frequency.',
    formula: 'n * f_0',
    where: { n: 'row.order', f_0: 'plan.nominal' },
    source: 'definition of a harmonic',
  },
  'waves.ar': (look) => wave(look, 'a', 're'),
  'waves.ai': (look) => wave(look, 'a', 'im'),
  'waves.br': (look) => wave(look, 'b', 're'),
  'waves.bi': (look) => wave(look, 'b', 'im'),
  'waves.cr': (look) => wave(look, 'c', 're'),
  'waves.ci': (look) => wave(look, 'c', 'im'),
  'waves.dr': (look) => wave(look, 'd', 're'),
  'waves.di': (look) => wave(look, 'd', 'im'),
};

/** What the stage was given, from the worked rig. */
function seenBy(look: Look): MismatchSeen {
  const bare = (path: string) => (path.endsWith('?') ? path.slice(0, -1) : path);
  return Object.fromEntries(
    Object.entries(mismatchReads).map(([name, path]) => [name, look(bare(path))]),
  ) as unknown as MismatchSeen;
}

function round(look: Look, swr: number): Round {
  const seen = seenBy(look);
  return goRound(seen, follow(seen), swr);
}

const typed = (look: Look) => round(look, look('mismatch.swr') as number);

const row = (look: Look, index: number) =>
  round(look, ratios(look('mismatch.swr') as number)[index] ?? 1);

const degrees = (k: number): Bound => ({
  value: (k * 2 * Math.PI) / ROUND,
  unit: '°',
  says: 'the worst angle',
});

function worstOf(
  look: Look,
  { at }: Round,
  which: keyof typeof formulas,
  place: keyof Round['at'],
  swr: string,
): Working {
  return {
    says: `${says[which]} ${goneRound}`,
    formula: formulas[which],
    where: { ...loadSteps(look, { swr, angle: degrees(at[place]) }), ...finalTerms(look, which) },
    source: circle,
  };
}

const hasParts = (look: Look) => (look('output.ladder') as OutputLadder).branches.length > 0;

const noLoss: Working = {
  says: 'There is no part that could lose anything.',
  formula: '10 * log10(R_ant / R_ant)',
  where: { R_ant: 'plan.antenna' },
  source: circle,
};

const lossOf = (look: Look, one: Round, swr: string): Working =>
  hasParts(look) ? worstOf(look, one, 'loss', 'loss', swr) : noLoss;

const says: Readonly<Record<keyof typeof formulas, string>> = {
  power: 'Half the squared current times R_ant, for the wave that the antenna keeps.',
  loss: 'Power into the network over what the antenna keeps of it.',
  held: 'The supply, and the swing with the drive held to what the supply allows.',
  unheld: 'The supply, and the swing if the planned current went on.',
  heat: 'Direct power less the power that goes into the network.',
};

function marginOf(
  look: Look,
  { at, margins, around, levels }: Round,
  way: 'plain' | 'same' | 'any',
  swr: string,
): Working {
  const k = at[way === 'plain' ? 'margin' : way];
  const least = margins[way][k] ?? 0;
  // Which harmonic it is depends on how the antenna is taken at the harmonics.
  const order =
    way === 'plain' ? (margins.order[k] ?? 2) : nearest(look, levels, around, k, way, least);
  return {
    says: `Limit less level of harmonic ${order}. ${goneRound}`,
    ...marginSteps(look, { swr, angle: degrees(k) }, { order, way, power: around.power[k] ?? 0 }),
    source: circle,
  };
}

/** The harmonic that comes to a margin. */
function nearest(
  look: Look,
  levels: Round['levels'],
  around: Round['around'],
  k: number,
  way: 'same' | 'any',
  least: number,
): number {
  const seen = seenBy(look);
  const { limit } = ruleSets[seen.rules];
  const found = levels.find((level) => {
    const asked = limit({
      frequency: level.order * seen.nominal,
      fundamental: seen.nominal,
      power: around.power[k] ?? 0,
      own: seen.ownLimit,
      ownLines: seen.ownRows,
    });
    return 10 * Math.log10(around.gain[k] ?? 1) - asked - level[way] === least;
  });
  return found?.order ?? 2;
}

function orderOf({ margins, at }: Round): Working {
  return {
    says: 'The one with the least margin at the worst angle.',
    formula: 'n',
    where: {
      n: { value: margins.order[at.margin] ?? 0, unit: '1', says: 'its order' },
    },
    source: 'the margins of all harmonics',
  };
}

function angleOf(k: number, where: string): Working {
  return {
    says: `The angle, of all in steps of 5°, at which ${where}.`,
    formula: 'k * 2 * pi / N',
    where: {
      k: { value: k, unit: '1', says: 'number of the step' },
      N: { value: ROUND, unit: '1', says: 'steps of a whole round' },
    },
    source: 'gone through one by one',
  };
}

function along(look: Look, formula: string, terms: Readonly<Record<string, Bound>>): Working {
  return {
    says: 'At this angle of the antenna’s reflection.',
    formula,
    where: { ...loadSteps(look, { swr: 'mismatch.swr', angle: 'point.angle' }), ...terms },
    source: circle,
  };
}

/** Size of c or d at a harmonic with the collector's own resistance across. */
function back(look: Look, wave: 'c' | 'd'): string {
  const from = wave === 'c' ? 'a' : 'b';
  const own = look('transmit.outputImpedance') !== null;
  const across = own ? ` + (${from}_r + i * ${from}_i) * R_ant / R_o` : '';
  return `abs(${wave}_r + i * ${wave}_i${across})`;
}

function backTerms(look: Look, index: number): Record<string, Bound> {
  const order = typed(look).levels[index]?.order ?? 2;
  const own = look('transmit.outputImpedance') !== null;
  return {
    ...waveTerms(look, order),
    ...(own ? { R_ant: 'plan.antenna', R_o: 'transmit.outputImpedance' } : {}),
  };
}

function wave(look: Look, which: Wave, part: 're' | 'im'): Working {
  const made = chainFormula(look, which, part, 'f');
  return {
    says: !hasParts(look)
      ? 'Nothing but the transformer, if there is one.'
      : 'The parts as matrices from the collector to the antenna, for the wave towards it or the one thrown back.',
    formula: made.formula,
    where: { f: 'row.frequency', ...made.where },
    source: 'chain matrices, any text on two-ports',
  };
}
