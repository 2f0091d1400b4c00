import { type Core, cores } from '../../data/cores.ts';

/** Ferrite for a transformer that carries power: low-loss mix 61, its size by the power. */
export function pickPowerFerrite(wanted: string, power: number): Core {
  const size = power <= 1 ? 'FT37' : power <= 5 ? 'FT50' : 'FT82';
  return coreOf(wanted === 'auto' ? `${size}-61` : wanted);
}

/** Ferrite for small signals: the smallest of mix 43, which needs the fewest turns. */
export function pickSmallFerrite(wanted: string): Core {
  return coreOf(wanted === 'auto' ? 'FT37-43' : wanted);
}

/** The core of that key; the first of the list for a key that isn't there. */
function coreOf(key: string): Core {
  return cores.find((core) => core.key === key) ?? (cores[0] as Core);
}
