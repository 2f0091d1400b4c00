import type { MathNode } from 'mathjs';
import type { Box } from './box.ts';

/** How tightly a box holds together: what stands in it may need brackets. */
export const binding = {
  choice: 0,
  logic: 1,
  comparison: 2,
  sum: 3,
  product: 4,
  /** Fractions and function calls: safe in a product, not under a power. */
  closed: 5,
  atom: 6,
} as const;

/** A box with how tightly it binds. */
export interface Laid {
  readonly box: Box;
  readonly binds: number;
}

/** Sets what stands for a symbol: its letters, or its number with unit. */
export type SetSymbol = (name: string) => Laid;

/** Lays out a part of an expression, with brackets if it binds less than `least`. */
export type At = (child: MathNode, least: number) => Box;
