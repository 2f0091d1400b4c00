import type { Bound, Look } from '../../fields/workings.ts';
import type { Unit } from '../../quantity/units.ts';
import type { FilterDesign } from './design.ts';

/** A number that the stage's own search supplies, as it stands in a formula. */
export const found = (value: number, unit: Unit, says: string): Bound => ({ value, unit, says });

/** A step of its own. */
export const step = (formula: string, unit: Unit, says: string): Bound => ({ formula, unit, says });

/** The exact design behind the sheet. */
export const designOf = (look: Look): FilterDesign => look('filter.design') as FilterDesign;

/** The crystal's symbols. */
export const crystalBounds = {
  f_s: 'filter.crystalFs',
  L_m: 'filter.crystalLm',
  C_0: 'filter.crystalC0',
  C_m: step('1 / ((2 * pi * f_s)^2 * L_m)', 'F', 'motional capacitance, from fs and Lm'),
} satisfies Record<string, Bound>;

/** Whether the crystals stand to ground. */
export const toGround = (look: Look): boolean => look('filter.form') === 'shunt';

/** Symbol of what lies across a crystal: its holder, C_0; to ground all that is there, C_w. */
export const holderSymbol = (look: Look): string => (toGround(look) ? 'C_w' : 'C_0');

/**
 * Steps to what lies across a crystal to ground; none for crystals in series. After `crystalBounds`.
 *
 * @param across what is fitted across every crystal: a path or a number
 */
export const holderSteps = (
  look: Look,
  across: Bound = 'filter.acrossFitted',
): Record<string, Bound> =>
  toGround(look)
    ? {
        C_st: 'filter.stray',
        C_ac: across,
        C_w: step('C_0 + C_st + C_ac', 'F', 'holder, stray and what is fitted across it'),
      }
    : {};

/**
 * Steps to the lossless crystal's reactance at a frequency, Ω.
 *
 * @param f symbol of the frequency
 * @param x symbol of the reactance that comes out
 * @param holder symbol of what lies across the crystal
 */
export const reactanceSteps = (f: string, x: string, holder: string): Record<string, Bound> => ({
  [`${x}_m`]: step(
    `2 * pi * L_m * (${f} - f_s) * (${f} + f_s) / ${f}`,
    'Ω',
    'reactance of the motional arm',
  ),
  [x]: step(
    `${x}_m / (1 - 2 * pi * ${f} * ${holder} * ${x}_m)`,
    'Ω',
    'reactance of the crystal with its holder',
  ),
});

export const chain = 'closed form: chain matrices of the ladder';
export const cohn =
  'S. B. Cohn, Dissipation Loss in Multiple-Coupled-Resonator Filters, Proc. IRE 47, 1959';
export const young = 'Matthaei, Young & Jones, Microwave Filters, 1964, eq. 4.05 and section 11.02';
export const reactanceMethod =
  'the couplings of Matthaei, Young & Jones with the crystal’s own reactance as the frequency variable';
export const susceptanceMethod =
  'the same with the crystal’s susceptance as the frequency variable: the dual circuit';
export const weinberg =
  'L. Weinberg, Network Analysis and Synthesis, 1962, chapter 13: continued fraction';
export const zobel =
  'O. J. Zobel, Theory and Design of Uniform and Composite Electric Wave-filters, BSTJ 2, 1923';
