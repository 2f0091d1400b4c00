import type { Look, Working } from '../../fields/workings.ts';
import { DROP } from './readings.ts';
import { seenBy } from './seen.ts';

const circuit = 'closed form of the equivalent circuit (IEC 60122-1)';
const text = (look: Look, key: string) => look(`measure.${key}`) as string;

const step = (formula: string, unit: 'Ω' | '1' | 'S' | 'F', says: string) => ({
  formula,
  unit,
  says,
});

/** Steps that the fixture's formulas share. */
const fixture = {
  R_T: 'measure.end',
  a: 'measure.peakLoss',
  f_k: 'measure.peak',
  C_h: 'measure.shunt',
  r: step('2 * R_T', 'Ω', 'both ends together'),
  A: step('10^(a / 10)', '1', 'loss as a ratio of powers'),
  b: step('2 * pi * f_k * C_h', 'S', 'susceptance across the motional arm'),
  g: step('1 - r^2 * (A - 1) * b^2', '1', 'what the capacitance lets past at the peak'),
} as const;

/** Loads of both readings of the oscillator, and the elastances that the motional arm meets. */
function shift(look: Look) {
  const direct = text(look, 'firstWith') === 'direct';
  return {
    C_0: 'measure.c0',
    C_L: 'measure.oscillator',
    ...(direct ? {} : { C_s1: 'measure.firstSeries' }),
    C_s2: 'measure.secondSeries',
    C_1: step(direct ? 'C_L' : 'C_L * C_s1 / (C_L + C_s1)', 'F', 'load at the first reading'),
    C_2: step('C_L * C_s2 / (C_L + C_s2)', 'F', 'load at the second reading'),
  };
}

/** The crystal's own figures. */
export const crystalWorkings = {
  fs: (look: Look): Working => {
    const method = text(look, 'method');
    if (method === 'pair') {
      return {
        says: 'The peak of the sweep.',
        formula: 'f_a',
        where: { f_a: 'measure.series' },
        source: 'as read',
      };
    }
    if (method === 'shift') {
      return {
        says: 'Down from the first reading by what the load there had raised it.',
        formula: 'sqrt(f_1^2 - 1 / (C_0 + C_1) / (4 * pi^2 * L_m))',
        where: { f_1: 'measure.first', ...shift(look), L_m: 'measure.lm' },
        source: circuit,
      };
    }
    return {
      says: 'The capacitance across it draws the peak a little below the series resonance.',
      formula: 'sqrt(f_k^2 + r^2 * (A - 1) * C_h * f_k^2 / (g * L_m))',
      where: { ...fixture, L_m: 'measure.lm' },
      source: circuit,
    };
  },
  lm: (look: Look): Working => {
    const method = text(look, 'method');
    if (method === 'pair') {
      return {
        says: 'The inductance that resonates with Cm at fs.',
        formula: '1 / ((2 * pi * f_s)^2 * C_m)',
        where: { f_s: 'measure.fs', C_m: 'measure.cm' },
        source: circuit,
      };
    }
    if (method === 'shift') {
      return {
        says: 'The loop’s reactance is zero at both readings: two equations, linear in Lm and 1/Cm.',
        formula: '(1 / (C_0 + C_2) - 1 / (C_0 + C_1)) / (4 * pi^2 * (f_2 - f_1) * (f_2 + f_1))',
        where: { f_1: 'measure.first', f_2: 'measure.second', ...shift(look) },
        source: circuit,
        assumes: 'The crystal’s loss moves both frequencies alike.',
      };
    }
    return {
      says: 'The motional reactance runs through a known span between the two edges of the peak.',
      formula: 'X / (4 * pi * W)',
      where: {
        ...fixture,
        W: 'measure.width',
        R_m: 'measure.rm',
        d: { value: DROP, unit: 'dB', says: 'where the width is taken, under the peak' },
        A_3: step('10^((a + d) / 10)', '1', 'loss at the edges as a ratio of powers'),
        g_3: step('1 - r^2 * (A_3 - 1) * b^2', '1', 'what the capacitance lets past there'),
        X: step('2 * sqrt(r^2 * A_3 - (R_m * g_3 + r)^2) / g_3', 'Ω', 'span of the reactance'),
      },
      source: circuit,
    };
  },
  cm: (look: Look): Working =>
    text(look, 'method') === 'pair'
      ? {
          says: 'From the distance between the two resonances.',
          formula: 'C_h * (f_b - f_a) * (f_b + f_a) / f_a^2',
          where: { C_h: 'measure.shunt', f_a: 'measure.series', f_b: 'measure.parallel' },
          source: circuit,
          assumes: 'All that lay across the crystal is known: an error there is one in Cm.',
        }
      : {
          says: 'The capacitance that resonates with Lm at fs.',
          formula: '1 / ((2 * pi * f_s)^2 * L_m)',
          where: { f_s: 'measure.fs', L_m: 'measure.lm' },
          source: circuit,
        },
  rm: {
    says: 'From the loss, with the capacitance across the crystal in the circuit.',
    formula: 'r * (sqrt(A) - 1) / g',
    where: fixture,
    source: `${circuit}; without the capacitance it is IEC 60444-1’s`,
  },
  qu: {
    says: 'The reactance of Lm over the loss.',
    formula: '2 * pi * f_s * L_m / R_m',
    where: { f_s: 'measure.fs', L_m: 'measure.lm', R_m: 'measure.rm' },
    source: circuit,
  },
  c0: {
    says: 'The meter’s reading less what it shows without the crystal.',
    formula: 'C_r - C_z',
    where: { C_r: 'measure.c0Read', C_z: 'measure.meterStray' },
    source: 'definition',
  },
  fp: {
    says: 'Where the crystal above its series resonance is inductive enough to meet C0.',
    formula: 'f_s * sqrt(1 + C_m / C_0)',
    where: { f_s: 'measure.fs', C_m: 'measure.cm', C_0: 'measure.c0' },
    source: circuit,
  },
} as const;

/** The circuit in which the readings were taken. */
export const circuitWorkings = {
  end: (look: Look): Working => {
    const jig = text(look, 'jig');
    return jig === 'own'
      ? {
          says: 'As given.',
          formula: 'R_o',
          where: { R_o: 'measure.jigOwn' },
          source: 'as typed',
        }
      : {
          says: 'What the jig shows the crystal.',
          formula: 'R_j',
          where: {
            R_j: {
              value: jig === 'pi' ? 12.5 : 50,
              unit: 'Ω',
              says: jig === 'pi' ? 'pi network of resistors' : 'plain jig',
            },
          },
          source: jig === 'pi' ? 'IEC 60444-1' : 'common practice, no source',
        };
  },
  shunt: {
    says: 'The holder, and the jig’s own capacitance beside it.',
    formula: 'C_0 + C_j',
    where: { C_0: 'measure.c0', C_j: 'measure.beside' },
    source: 'capacitances side by side',
  },
  oscillator: (look: Look): Working => {
    const seen = seenBy(look);
    if (seen.oscillatorBy === 'typed') {
      return {
        says: 'As given.',
        formula: 'C_own',
        where: { C_own: 'measure.oscillatorOwn' },
        source: 'as typed',
      };
    }
    if (seen.oscillatorBy === 'feedback') {
      return {
        says: 'The feedback capacitors in series, transistor and wiring beside them.',
        formula: 'C_fa * C_fb / (C_fa + C_fb) + C_y',
        where: {
          C_fa: 'measure.feedbackUpper',
          C_fb: 'measure.feedbackLower',
          C_y: 'measure.oscillatorStray',
        },
        source: 'capacitances in series and side by side',
      };
    }
    const direct = seen.firstWith === 'direct';
    return {
      says: 'The shift by the series capacitor over the shift by the capacitor across the oscillator, which does not depend on the crystal’s motional arm.',
      left: '(f_2 - f_1) * (f_2 + f_1) / ((f_1 - f_3) * (f_1 + f_3))',
      right: '(1 / (C_0 + C_2) - 1 / (C_0 + C_1)) / (1 / (C_0 + C_1) - 1 / (C_0 + C_3))',
      root: 'C_L',
      where: {
        f_1: 'measure.first',
        f_2: 'measure.second',
        f_3: 'measure.third',
        C_x: 'measure.across',
        ...shift(look),
        C_3: step(
          direct ? 'C_L + C_x' : '(C_L + C_x) * C_s1 / (C_L + C_x + C_s1)',
          'F',
          'load at the third reading',
        ),
      },
      source: circuit,
    };
  },
} as const;
