import type { Together } from './together.ts';

/** Steps of one cycle: every five degrees, both ends drawn. */
const STEPS = 72;

/** Less than this is rounding where the pulse begins. */
const NOTHING = 1e-15;

/**
 * Collector voltage and current of one side over a cycle by hand: v = V + (V − Vsat)·cos φ, and the
 * tip of a cosine that stands at φ = π, where the voltage is lowest.
 *
 * @return phase rad, voltage V, current A, at 73 places from 0 to 2π
 */
export function handCycle(
  seen: { readonly supply: number; readonly saturation: number },
  stage: {
    readonly conductionAngle: number;
    readonly peakCurrent: number;
    readonly quiescent: number;
    readonly fundamental: number;
  },
  { sides }: Together,
) {
  const phase = Float64Array.from({ length: STEPS + 1 }, (_, i) => (2 * Math.PI * i) / STEPS);
  const cut = Math.cos(stage.conductionAngle / 2);
  const classA = stage.conductionAngle >= 2 * Math.PI;
  const swing = seen.supply - seen.saturation;
  return {
    phase,
    voltage: phase.map((p) => seen.supply + swing * Math.cos(p)),
    current: phase.map((p) => {
      if (classA) return stage.quiescent / sides - stage.fundamental * Math.cos(p);
      const lift = (-Math.cos(p) - cut) / (1 - cut);
      return lift > NOTHING ? stage.peakCurrent * lift : 0;
    }),
  };
}
