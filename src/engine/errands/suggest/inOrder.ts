import type { Offered } from './suggestAnswer.ts';

/** What is best, as the user says. */
export type Prefer = 'parts' | 'coils' | 'loss';

const windings = ({ coils, transformers }: Offered) => coils + transformers;

/** Figures to be least, the first first; each is looked at where those before are equal. */
const keys: Readonly<Record<Prefer, readonly ((one: Offered) => number)[]>> = {
  parts: [({ parts }) => parts, windings, ({ loss }) => loss],
  coils: [windings, ({ parts }) => parts, ({ loss }) => loss],
  loss: [({ loss }) => loss, ({ parts }) => parts, windings],
};

/** Less than nought where `a` is the better one. */
export function inOrder(prefer: Prefer): (a: Offered, b: Offered) => number {
  return (a, b) => {
    for (const key of keys[prefer]) {
      const apart = key(a) - key(b);
      if (apart !== 0) return apart;
    }
    return (b.margin ?? 1e9) - (a.margin ?? 1e9);
  };
}
