import { type HolderKey, holders, typicalCrystals } from '../../data/holders.ts';

/**
 * A guess at a crystal's motional capacitance (F), resistance (Ω) and holder capacitance (F)
 * from its frequency (Hz) and holder: log-log interpolation of the typical table, its end slopes
 * kept outside for the resistance, its end values for the capacitance.
 */
export function typicalCrystal(
  frequency: number,
  holder: HolderKey,
): { cm: number; rm: number; c0: number } {
  const { c0, cmFactor, rmFactor } = holders[holder];
  const cms = typicalCrystals.map(({ f, lm }) => 1 / ((2 * Math.PI * f) ** 2 * lm));
  const rms = typicalCrystals.map(({ rm }) => rm);
  return {
    cm: cmFactor * alongLog(frequency, cms, false),
    rm: rmFactor * alongLog(frequency, rms, true),
    c0,
  };
}

function alongLog(frequency: number, values: readonly number[], beyond: boolean): number {
  const fs = typicalCrystals.map(({ f }) => f);
  let i = fs.findIndex((f) => f > frequency) - 1;
  if (i === -2) i = fs.length - 2;
  if (i === -1) i = 0;
  const [f0 = 1, f1 = 1] = [fs[i], fs[i + 1]];
  const [v0 = 1, v1 = 1] = [values[i], values[i + 1]];
  const t = Math.log(frequency / f0) / Math.log(f1 / f0);
  const held = beyond ? t : Math.min(1, Math.max(0, t));
  return v0 * (v1 / v0) ** held;
}
