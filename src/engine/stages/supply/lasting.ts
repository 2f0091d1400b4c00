import { type Battery, batteries, cellVolts } from '../../data/batteries.ts';
import type { SupplySeen } from './seen.ts';

/**
 * Time that a battery gives a current until nothing is left, s, by Peukert: T·(C/(I·T))^k with the
 * time T that its capacity C is printed for; never more than the printed capacity.
 *
 * @param capacity A·s
 * @param current A
 * Source: Peukert, Elektrotechnische Zeitschrift 20, 1897. Below the printed current the rule
 * promises more than is printed, which an old battery doesn't keep.
 */
export function lasts(capacity: number, current: number, { over, peukert }: Battery): number {
  return Math.min(over * (capacity / (current * over)) ** peukert, capacity / current);
}

/** A supply of less resistance than this (Ω) is one without any: no current into a short to name. */
const STIFF = 1e-6;

/** Points of the curve, both ends included. */
const POINTS = 61;

/** How long the battery lasts on a mean current (A), its volts, and what the final gives then. */
export function lasting(seen: SupplySeen, mean: number) {
  const battery: Battery = batteries[seen.battery];
  const strung = seen.cells ?? Math.max(1, Math.floor(seen.supplyVoltage / battery.perCell + 0.5));
  const empty = lasts(seen.capacity, mean, battery);
  const volts = (drawn: number) => strung * cellVolts(battery, drawn);
  const power = (v: number) => seen.pep * Math.min(1, swing(seen, v)) ** 2;
  const time = Float64Array.from({ length: POINTS }, (_, i) => (empty * i) / (POINTS - 1));
  const voltage = time.map((t) => volts(t / empty));
  const endVoltage = volts(battery.usable);
  const endPower = power(endVoltage);
  return {
    hours: battery.usable * empty,
    strung,
    fullVoltage: volts(0),
    endVoltage,
    endPower,
    endLoss: endPower > 0 ? 10 * Math.log10(endPower / seen.pep) : null,
    discharge: { time, voltage, power: voltage.map(power) },
    short: seen.resistance > STIFF ? volts(0) / seen.resistance : null,
  };
}

/** Greatest swing of the collector from so many volts behind the supply's resistance, over the planned. */
function swing(seen: SupplySeen, volts: number): number {
  const { supplyVoltage, saturation, resistance, peak } = seen;
  return Math.max(0, volts - saturation) / (supplyVoltage - saturation + resistance * peak);
}
