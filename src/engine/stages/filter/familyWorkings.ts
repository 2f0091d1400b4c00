import { couplings, type Family } from '../../circuit/couplings.ts';
import { endRatio } from '../../circuit/doubledEnds.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import { cohn, found, reactanceMethod, step, weinberg, young, zobel } from './bounds.ts';
import type { filterFields } from './fields.ts';

type Workings = StageWorkings<typeof filterFields>;

const familyOf = (look: Look) => look('filter.family') as Family;
const positions = (look: Look) => look('filter.crystals') as number;

/** Steps that Chebyshev's formulas share. */
const chebyshevSteps: Record<string, Bound> = {
  n: 'filter.crystals',
  A_r: 'filter.ripple',
  beta: step('-log(tanh(A_r * log(10) / 40))', '1', 'β of the ripple'),
  gamma: step('sinh(beta / (2 * n))', '1', 'γ of ripple and order'),
  Omega_3: step(
    'cosh(acosh(1 / sqrt(10^(A_r / 10) - 1)) / n)',
    '1',
    'where the response is at half power, against the edge of the ripple',
  ),
};

const sine = (i: string) => `sin((2 * ${i} - 1) * pi / (2 * n))`;

/** An element of the prototype that a family's poles make. */
const element = (look: Look, i: number): Bound => {
  const g = couplings(familyOf(look), positions(look), 0).g ?? [];
  const says =
    i === g.length - 1
      ? 'the load of the prototype'
      : `element ${i} of the prototype, from the family’s poles by continued fraction; zeros of reflection left and right by turns, for ends nearly alike`;
  return { value: g[i] ?? 0, unit: '1', says, source: poleSource(familyOf(look)) };
};

const poleSources: Partial<Record<Family, string>> = {
  bessel: 'W. E. Thomson, Delay networks, Proc. IEE 96 part III, 1949: reverse Bessel polynomial',
  linear005: 'equal-ripple phase, as in A. I. Zverev, Handbook of Filter Synthesis, 1967',
  linear05: 'equal-ripple phase, as in A. I. Zverev, Handbook of Filter Synthesis, 1967',
  gaussian:
    'Gaussian to 6 dB within 0.1 dB, as in A. I. Zverev, Handbook of Filter Synthesis, 1967',
};

const poleSource = (family: Family): string => poleSources[family] ?? weinberg;

/** R/Xc of doubled ends. */
const ratio = (look: Look): Bound =>
  found(
    endRatio(positions(look)),
    '1',
    'ends against the reactance of a coupling: of all ratios the one with the least ripple',
  );

/** Chebyshev's U of order n − 2 as a formula. */
export function chebyshevU(n: number, x: string): string {
  if (n === 2) return '1';
  if (n === 3) return `(2 * ${x})`;
  return `(sin((n - 1) * acos(${x})) / sin(acos(${x})))`;
}

export const familyWorkings: Pick<
  Workings,
  'endQ' | 'endQLoad' | 'couplings.k' | 'meshes.sum' | 'crystalsNeeded'
> = {
  endQ: (look) => endQ(look),
  endQLoad: (look) => {
    const n = positions(look);
    if (poleSources[familyOf(look)]) {
      return {
        says: 'The last element of the prototype and its load.',
        formula: 'g_n * g_load',
        where: { g_n: element(look, n), g_load: element(look, n + 1) },
        source: weinberg,
      };
    }
    return {
      says: 'A symmetrical family: as at the source.',
      formula: 'q',
      where: { q: 'filter.endQ' },
      source: young,
    };
  },
  'couplings.k': (look, index) => coupling(look, index),
  'meshes.sum': (look, index) => {
    const k = look('filter.couplings') as readonly { readonly k: number }[];
    const sides: Record<string, Bound> = {};
    const left = k[index - 1];
    const right = k[index];
    if (left) sides.k_left = found(left.k, '1', `coupling at junction ${index}`);
    if (right) sides.k_right = found(right.k, '1', `coupling at junction ${index + 1}`);
    const sum = Object.keys(sides).join(' + ');
    const doubled = familyOf(look) === 'doubled' && (index === 0 || index === k.length);
    if (!doubled) {
      return {
        says: 'What the coupling capacitors on its two sides add to it.',
        formula: sum,
        where: sides,
        source: reactanceMethod,
      };
    }
    return {
      says: 'What its coupling capacitor adds, against the half reactance of two crystals side by side.',
      formula: `p * ${sum}`,
      where: { p: found(2, '1', 'crystals side by side'), ...sides },
      source: reactanceMethod,
    };
  },
  crystalsNeeded: (look) =>
    familyOf(look) === 'doubled'
      ? {
          says: 'One for each position and one more at each end.',
          formula: 'n + 2',
          where: { n: 'filter.crystals' },
          source: 'definition',
        }
      : {
          says: 'One for each position.',
          formula: 'n',
          where: { n: 'filter.crystals' },
          source: 'definition',
        },
};

function endQ(look: Look): Working {
  const family = familyOf(look);
  if (family === 'butterworth') {
    return {
      says: 'The first element of the maximally flat prototype.',
      formula: '2 * sin(pi / (2 * n))',
      where: { n: 'filter.crystals' },
      source: young,
    };
  }
  if (family === 'chebyshev') {
    return {
      says: 'The first element of the equal-ripple prototype, taken from the edge of the ripple to half power.',
      formula: `2 * ${sine('1')} / gamma * Omega_3`,
      where: chebyshevSteps,
      source: young,
    };
  }
  if (family === 'equal') {
    return {
      says: 'With all elements alike, half the distance between the half-power points: there the loss of the chain is a factor of two.',
      left: 'cos(n * acos(q / 2))^2 + (sin(n * acos(q / 2)) / sin(acos(q / 2)))^2',
      right: '2',
      root: 'q',
      where: { q: 'filter.endQ', n: 'filter.crystals' },
      source: `${cohn}; loss as T² + U² of Chebyshev’s polynomials`,
    };
  }
  if (family === 'doubled') {
    return {
      says: 'By the image parameters of n − 1 sections alike: at half power their mismatch loses as much as is passed.',
      left: `(rho - (1 - (rho * q)^2) / rho)^2 * ${chebyshevU(positions(look), 'rho * q')}^2 / 4`,
      right: '1',
      root: 'q',
      where: { q: 'filter.endQ', n: 'filter.crystals', rho: ratio(look) },
      source: zobel,
    };
  }
  return {
    says: 'The first element of the prototype, whose poles are scaled to half power.',
    formula: 'g_1',
    where: { g_1: element(look, 1) },
    source: weinberg,
  };
}

function coupling(look: Look, index: number): Working {
  const family = familyOf(look);
  if (family === 'equal') {
    return {
      says: 'All couplings are alike: one over the half-power edge.',
      formula: '1 / q',
      where: { q: 'filter.endQ' },
      source: cohn,
    };
  }
  if (family === 'doubled') {
    return {
      says: 'All couplings are alike; the ends are the ratio of R and Xc times them.',
      formula: '1 / (2 * rho * q)',
      where: { q: 'filter.endQ', rho: ratio(look) },
      source: zobel,
    };
  }
  const i = { i: 'row.junction' };
  const below = `2 * sqrt(${sine('i')} * ${sine('(i + 1)')})`;
  if (family === 'butterworth') {
    return {
      says: 'One over the root of two neighbouring elements of the prototype.',
      formula: `1 / (${below})`,
      where: { n: 'filter.crystals', ...i },
      source: young,
    };
  }
  if (family === 'chebyshev') {
    return {
      says: 'One over the root of two neighbouring elements of the prototype, taken to half power.',
      formula: `sqrt(gamma^2 + sin(i * pi / n)^2) / (${below}) / Omega_3`,
      where: { ...chebyshevSteps, ...i },
      source: young,
    };
  }
  return {
    says: 'One over the root of two neighbouring elements of the prototype.',
    formula: '1 / sqrt(g_left * g_right)',
    where: { g_left: element(look, index + 1), g_right: element(look, index + 2) },
    source: weinberg,
  };
}
