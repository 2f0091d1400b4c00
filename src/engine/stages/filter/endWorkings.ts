import type { Bound, Look, StageWorkings, WorkingOf } from '../../fields/workings.ts';
import { step } from './bounds.ts';
import type { filterFields } from './fields.ts';

type Workings = StageWorkings<typeof filterFields>;
type End = 'source' | 'load';

const marks = { source: 'S', load: 'L' } as const;
const designed = { source: 'filter.ends', load: 'filter.endsLoad' } as const;

/** Resistance and reactance of an end, and their square. */
function endOf(look: Look, end: End): Record<string, Bound> {
  const given = `filter.${end}Resistance`;
  return {
    [`R_${marks[end]}`]: look(given) === null ? designed[end] : given,
    [`X_${marks[end]}`]: `filter.${end}Reactance`,
  };
}

const turned = 'closed form: series impedance as a parallel one';

const parallelR =
  (end: End): WorkingOf =>
  (look) => {
    const m = marks[end];
    return {
      says: 'Larger than the resistance in series by the square of their ratio.',
      formula: `(R_${m}^2 + X_${m}^2) / R_${m}`,
      where: endOf(look, end),
      source: turned,
    };
  };

const parallelC =
  (end: End): WorkingOf =>
  (look) => {
    const m = marks[end];
    return {
      says: 'What has this susceptance at the middle of the passband.',
      formula: `-X_${m} / (2 * pi * f_mid * (R_${m}^2 + X_${m}^2))`,
      where: { ...endOf(look, end), f_mid: 'filter.centre' },
      source: turned,
    };
  };

const parallelL =
  (end: End): WorkingOf =>
  (look) => {
    const m = marks[end];
    return {
      says: 'What has this susceptance at the middle of the passband.',
      formula: `(R_${m}^2 + X_${m}^2) / (2 * pi * f_mid * X_${m})`,
      where: { ...endOf(look, end), f_mid: 'filter.centre' },
      source: turned,
    };
  };

const bridge = 'closed form: a capacitor between two impedances';

export const endWorkings: Pick<
  Workings,
  | 'sourceParallelR'
  | 'sourceParallelC'
  | 'sourceParallelL'
  | 'loadParallelR'
  | 'loadParallelC'
  | 'loadParallelL'
  | 'leakageFound'
  | 'floor'
> = {
  sourceParallelR: parallelR('source'),
  sourceParallelC: parallelC('source'),
  sourceParallelL: parallelL('source'),
  loadParallelR: parallelR('load'),
  loadParallelC: parallelC('load'),
  loadParallelL: parallelL('load'),
  leakageFound: (look) => {
    if (look('filter.leakage') !== null) {
      return {
        says: 'As given.',
        formula: 'C_leak',
        where: { C_leak: 'filter.leakage' },
        source: 'as typed',
      };
    }
    return {
      says: 'The capacitance that lets just so much through between these ends.',
      formula: '1 / (2 * pi * f_mesh * (X_S + X_L + X_r))',
      where: {
        A_leak: 'filter.leakageDb',
        f_mesh: 'filter.alignment',
        ...endOf(look, 'source'),
        ...endOf(look, 'load'),
        X_r: step(
          'sqrt(4 * R_S * R_L * 10^(A_leak / 10) - (R_S + R_L)^2)',
          'Ω',
          'reactance in the whole loop',
        ),
      },
      source: bridge,
    };
  },
  floor: (look) => ({
    says: 'What comes past the filter alone, against its passband.',
    formula: '10 * log10(((R_S + R_L)^2 + X_p^2) / (4 * R_S * R_L)) - A_best',
    where: {
      C_past: 'filter.leakageFound',
      f_mesh: 'filter.alignment',
      ...endOf(look, 'source'),
      ...endOf(look, 'load'),
      X_p: step(
        'X_S + X_L - 1 / (2 * pi * f_mesh * C_past)',
        'Ω',
        'reactance of both ends and the leakage',
      ),
      A_best: 'filter.loss',
    },
    source: bridge,
    assumes: 'The crystals themselves let nothing through, far from their resonance.',
  }),
};
