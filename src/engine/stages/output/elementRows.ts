import { INSIDE_SIZE } from '../../circuit/ladderTransfer.ts';
import { format } from '../../quantity/format.ts';
import type { Fitted } from './fitParts.ts';
import { branchOf } from './ladderOf.ts';

/** Usual voltage ratings of capacitors, V. */
export const RATINGS = [50, 63, 100, 200, 250, 500, 1000, 2000, 3000, 5000] as const;

/** Heat in one part up to which it stays cool, and from which it gets hot, W. */
export const COOL = 0.1;
export const HOT = 0.5;

/**
 * Every part with its voltage, current and heat at full power.
 *
 * @param parts from the collector on
 * @param inside branch voltages and currents for one ampere into the network, from the ladder
 * @param transimpedance load volts for that ampere, Ω
 * @param antennaPeak voltage at the antenna, V peak
 * @param nominal operating frequency, Hz
 */
export function elementRows(
  parts: readonly Fitted[],
  inside: Float64Array,
  transimpedance: number,
  antennaPeak: number,
  nominal: number,
) {
  const w = 2 * Math.PI * nominal;
  const branches = branchOf(parts.map(({ part }) => part.kind));
  return parts.map(({ part, wanted, value, singles, q }, k) => {
    const at = (branches[k] ?? 0) * INSIDE_SIZE;
    const volts = (antennaPeak * Math.hypot(inside[at] ?? 0, inside[at + 1] ?? 0)) / transimpedance;
    const x = w * value;
    const isCoil = part.kind === 'coil';
    const resistance = x / q;
    // Conductance and size of the admittance of the part itself.
    const g = isCoil ? resistance / (resistance ** 2 + x ** 2) : x / q;
    const y = isCoil ? 1 / Math.hypot(resistance, x) : x * Math.hypot(1, 1 / q);
    const heat = (volts ** 2 / 2) * g;
    return {
      label: part.label,
      part: part.kind,
      exactC: isCoil ? null : wanted,
      exactL: isCoil ? wanted : null,
      fittedC: isCoil ? null : value,
      l: isCoil ? value : null,
      made: singles.length > 1 ? singles.map((one) => format(one, 'F', 2)).join(' + ') : null,
      volts,
      amps: (volts / Math.SQRT2) * y,
      rating: isCoil ? null : ratingFor(volts),
      heat,
      warmth: (heat > HOT ? 'hot' : heat > COOL ? 'warm' : 'cool') as 'cool' | 'warm' | 'hot',
    };
  });
}

/** The coils as they come out of whole turns, what they lose, and what their traps stop. */
export function woundRows(parts: readonly Fitted[]) {
  return parts.flatMap(({ part, value, q, own, wound }, k) => {
    if (wound === null) return [];
    const next = parts[k + 1];
    const across = next?.part.kind === 'across' ? next.value : 0;
    return [
      {
        label: part.label,
        core: wound.on === 'ring' ? wound.core.title : `air, ${format(wound.form.former, 'm', 2)}`,
        wire: wound.on === 'ring' ? wound.wire.title : format(wound.form.wire, 'm', 2),
        turns: wound.on === 'ring' ? wound.turns : null,
        turnsOnAir: wound.on === 'ring' ? null : wound.turns,
        lWound: wound.l,
        q,
        own,
        notch: part.notch === null ? null : 1 / (2 * Math.PI * Math.sqrt(value * (across + own))),
      },
    ];
  });
}

function ratingFor(volts: number): number {
  return RATINGS.find((rating) => rating >= 2 * volts) ?? 2 * volts;
}
