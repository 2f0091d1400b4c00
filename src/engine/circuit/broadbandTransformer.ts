import { MU0 } from './wireLoss.ts';

/**
 * Turns that give a winding so many times its circuit's resistance as impedance at the lowest
 * frequency, not rounded: √(times·R/(2πf·A_L·|μ|/μi)). Four times costs 0.07 dB, twice 0.26 dB.
 *
 * @param resistance that the winding works across, Ω
 * @param times impedance wanted over resistance; four to five is the rule
 * @param al inductance of one turn at low frequency, H
 * @param kept size of the permeability at the frequency over the initial one
 * @param frequency lowest working frequency, Hz
 */
export function turnsForReactance(
  resistance: number,
  times: number,
  al: number,
  kept: number,
  frequency: number,
): number {
  return Math.sqrt((times * resistance) / (2 * Math.PI * frequency * al * kept));
}

/**
 * A lossy winding as a resistance with a reactance beside it, Ω. In series it is
 * jωL·(μ′ − jμ″)/μi; turned round, R = ωL·|μ|²/(μi·μ″) and X = ωL·|μ|²/(μi·μ′).
 *
 * @param reactance ωL with the initial permeability, Ω
 * @param initial permeability
 * @param stores μ′ at the frequency
 * @param loses μ″ at the frequency, above 0
 */
export function besideEachOther(
  reactance: number,
  initial: number,
  stores: number,
  loses: number,
): { r: number; x: number } {
  const whole = (reactance * (stores * stores + loses * loses)) / initial;
  return { r: whole / loses, x: whole / stores };
}

/**
 * Loss of a matched pair of resistances that a winding lies across, dB: it takes power by R and
 * throws it back by X, |1 + R₁/2·(1/R + 1/jX)|².
 *
 * @param resistance of source and load alike, Ω
 * @param r, x of the winding side by side, Ω
 */
export function shuntLoss(resistance: number, r: number, x: number): number {
  return 10 * Math.log10((1 + resistance / (2 * r)) ** 2 + (resistance / (2 * x)) ** 2);
}

/**
 * Leakage inductance of two windings whose wires run beside each other, H: that of a pair of wires
 * as long as the first, μ₀/π·arcosh(s/d)·length. Within a factor of two on a toroid.
 *
 * @param length of the first winding's turns, m
 * @param apart between the middles of the wires, m
 * @param bare diameter of the copper, m
 * Source: inductance of a two-wire line, closed form.
 */
export function pairLeakage(length: number, apart: number, bare: number): number {
  return (MU0 / Math.PI) * Math.acosh(apart / bare) * length;
}

/**
 * Warming of a core in still air, K: (power over surface in mW/cm²)^0.833.
 *
 * @param power turned into heat, W
 * @param surface of the core, m²
 * Source: common practice of core makers, from memory; within a third.
 */
export function surfaceRise(power: number, surface: number): number {
  return (power / surface / 10) ** 0.833;
}

/**
 * Share of its inductance that direct current leaves to a winding, by a magnetisation curve of the
 * shape B = B_s·tanh(μ₀μiH/B_s): 1/cosh²(μ₀μiH/B_s).
 *
 * @param field N·I/path, A/m
 * @param initial permeability
 * @param saturation B_s, T
 * A planning figure: real curves bend earlier and saturate later.
 */
export function leftByDirectCurrent(field: number, initial: number, saturation: number): number {
  return 1 / Math.cosh((MU0 * initial * field) / saturation) ** 2;
}
