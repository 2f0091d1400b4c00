import { nomeSeries } from '../../circuit/ellipticEdge.ts';
import { functionsOf } from '../../circuit/ellipticPrototype.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { outputFields } from './fields.ts';

const source = 'Orfanidis, Lecture Notes on Elliptic Filter Design, 2006';

/** Stop band of an elliptic filter: where it begins, and what it attenuates at least. */
export const stopWorkings: Pick<StageWorkings<typeof outputFields>, 'stopEdge' | 'stopLoss'> = {
  stopEdge: (look) => {
    const by = look('output.stopBy') as 'notch' | 'edge' | 'attenuation';
    if (by === 'edge') {
      return {
        says: 'As typed, so far above the cutoff.',
        formula: 'r_s * f_c',
        where: { r_s: 'output.stopRatio', f_c: 'output.cutoff' },
        source: 'as typed',
      };
    }
    return by === 'notch' ? fromNotch : fromAttenuation;
  },
  stopLoss: (look) => stopLoss(look),
};

/** Numbers of the nome's series in powers of e, as a formula. */
const series = `e * (${nomeSeries.map((each, k) => (k === 0 ? '1' : `${each} * e^${4 * k}`)).join(' + ')})`;

/** Steps from a modulus to its nome. */
const nomeSteps = (k: string): Record<string, Bound> => ({
  k_2: { formula: `sqrt(1 - ${k}^2)`, unit: '1', says: 'complementary modulus' },
  e: {
    formula: `${k}^2 / (2 * (1 + k_2) * (1 + sqrt(k_2))^2)`,
    unit: '1',
    says: 'first term of the nome',
  },
});

const powers = (list: readonly number[]): string => list.map((n) => `q^${n}`).join(' + ');

/** Theta functions of the nome at nought: without 2·q^(1/4), and whole. */
const thetaTwo = `1 + ${powers([2, 6, 12, 20, 30, 42])}`;
const thetaThree = `1 + 2 * (${powers([1, 4, 9, 16, 25, 36])})`;

/** The root put in: the lowest notch of a filter with this edge falls on the second harmonic. */
const fromNotch: Working = {
  says: 'The edge at which the lowest notch, f_s/cd(K/n), falls on the second harmonic.',
  left: 'f_s / c_d',
  right: '2 * f_0',
  root: 'f_s',
  where: {
    f_s: 'output.stopEdge',
    f_c: 'output.cutoff',
    n: 'output.order',
    f_0: 'plan.nominal',
    k: { formula: 'f_c / f_s', unit: '1', says: 'modulus' },
    ...nomeSteps('k'),
    q: { formula: series, unit: '1', says: 'nome' },
    z: { formula: 'pi / (2 * n)', unit: '1', says: 'place, a quarter period being π/2' },
    s_2: {
      formula: `(${[0, 1, 2, 3, 4, 5].map((m) => `${m === 0 ? '' : `q^${m * (m + 1)} * `}cos(${2 * m + 1} * z)`).join(' + ')}) / (${thetaTwo})`,
      unit: '1',
      says: 'theta function of the cosine there, over that at nought',
    },
    s_3: {
      formula: `(1 + 2 * (${[1, 2, 3, 4, 5, 6].map((m) => `q^${m * m} * cos(${2 * m} * z)`).join(' + ')})) / (${thetaThree})`,
      unit: '1',
      says: 'that of the delta amplitude, likewise',
    },
    c_d: { formula: 's_2 / s_3', unit: '1', says: 'elliptic function cd' },
  },
  source: `${source}; Abramowitz & Stegun, 16.38`,
};

const fromAttenuation: Working = {
  says: 'The nomes of ripple over attenuation and of cutoff over edge go as q = q₁^(1/n).',
  formula: `f_c * (${thetaThree})^2 / (4 * sqrt(q) * (${thetaTwo})^2)`,
  where: {
    A_r: 'output.ripple',
    A_want: 'output.stopWanted',
    n: 'output.order',
    f_c: 'output.cutoff',
    k_1: {
      formula: 'sqrt((10^(A_r / 10) - 1) / (10^(A_want / 10) - 1))',
      unit: '1',
      says: 'ripple over attenuation',
    },
    ...nomeSteps('k_1'),
    q_1: { formula: series, unit: '1', says: 'its nome' },
    q: { formula: 'q_1^(1 / n)', unit: '1', says: 'nome of cutoff over edge' },
  },
  source: `${source}, eq. 48; Abramowitz & Stegun, 16.38`,
};

function stopLoss(look: Look): Working {
  const n = look('output.order') as number;
  const edge = (look('output.stopEdge') as number) / (look('output.cutoff') as number);
  const { pairs } = functionsOf(n, look('output.ripple') as number, edge);
  const places = Object.fromEntries(
    pairs.map(({ sn }, i): [string, Bound] => [
      `s_${i + 1}`,
      { value: sn, unit: '1', says: `elliptic sine of ${2 * i + 1}/${n} of the quarter period` },
    ]),
  );
  return {
    says: 'From the ripple and the discrimination of the elliptic function.',
    formula: `10 * log10(1 + (10^(A_r / 10) - 1) / ((f_c / f_s)^n * (${Object.keys(places).join(' * ')})^4)^2)`,
    where: {
      A_r: 'output.ripple',
      n: 'output.order',
      f_c: 'output.cutoff',
      f_s: 'output.stopEdge',
      ...places,
    },
    source: `${source}, eq. 47`,
  };
}
