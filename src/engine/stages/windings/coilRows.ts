import { fluxGuide, peakFlux, thickestWire, turnsFor, wireLength } from '../../circuit/toroid.ts';
import { toroidCapacitance } from '../../circuit/toroidCapacitance.ts';
import { pickToroid } from '../../circuit/winding/pickToroid.ts';
import { proximityRise, skinRise, wireResistance } from '../../circuit/wireLoss.ts';
import type { Core } from '../../data/cores.ts';
import type { Wire } from '../../data/wires.ts';
import type { Outcome } from '../../fields/kinds.ts';
import { format } from '../../quantity/format.ts';
import { bunched, coilAdvice } from './coilAdvice.ts';
import type { WindingsSeen } from './seen.ts';

/** A coil that the rig needs. */
export interface CoilWanted {
  readonly label: string;
  /** H. */
  readonly l: number;
  /** Peak voltage across it at full power, V; null where the signal is small. */
  readonly voltage: number | null;
  /** Measured, H; null where it isn't. */
  readonly own: number | null;
}

/** The coils that the stages before ask for. */
export function coilsWanted(seen: Pick<WindingsSeen, 'coils' | 'seriesL'>): CoilWanted[] {
  const output = (seen.coils ?? []).flatMap(({ label, l, voltage, own }): CoilWanted[] =>
    label === null || l === null ? [] : [{ label, l, voltage, own }],
  );
  return seen.seriesL === null
    ? output
    : [...output, { label: 'Carrier oscillator', l: seen.seriesL, voltage: null, own: null }];
}

/** Each coil on its core: turns, wire, Q, flux. */
export function coilRows(seen: WindingsSeen) {
  return coilsWanted(seen).map((wanted) => coilRow(wanted, seen));
}

function coilRow({ label, l, voltage, own }: CoilWanted, seen: WindingsSeen) {
  const { nominal, tail } = seen;
  const rms = voltage === null ? 0 : voltage / Math.SQRT2;
  const { row, wires } = seen.shelf;
  const core = pickToroid(row, l, nominal, rms) as (typeof row)[number];
  const { size, al } = core;
  const turnsExact = turnsFor(l, al);
  const turns = Math.max(1, Math.round(turnsExact));
  const thickest = thickestWire(size.inner, turns);
  const fitting = wires.filter(({ overall }) => overall <= thickest);
  const wire = (fitting.at(-1) ?? wires[0]) as Wire;
  const length = wireLength(size, wire.overall, turns, tail);
  const resistanceDc = wireResistance(length, wire.bare);
  const resistance =
    resistanceDc * skinRise(wire.bare, nominal) * proximityRise(pitchShare(core, wire, turns));
  const lAt = al * turns ** 2;
  const q = 1 / (resistance / (2 * Math.PI * nominal * lAt) + 1 / (core.mix.coreQ ?? 1));
  const selfCapacitance = toroidCapacitance(
    wireLength(size, wire.overall, 1, 0),
    wire.bare,
    wire.overall,
  );
  const flux = voltage === null ? null : peakFlux(rms, turns, size.area, nominal);
  const fluxLimit = flux === null ? null : fluxGuide(nominal);
  const coverage =
    (turns * Math.asin(Math.min(1, wire.overall / (size.inner - wire.overall)))) / Math.PI;
  return {
    label,
    core: core.title,
    l,
    al,
    turnsExact,
    turns,
    lBelow: al * (turns - 1) ** 2,
    lAt,
    lAbove: al * (turns + 1) ** 2,
    lLow: lAt * (1 - core.mix.tolerance),
    lHigh: lAt * (1 + core.mix.tolerance),
    lBunched: bunched(lAt, coverage),
    own,
    advice: coilAdvice({ own, wanted: l, turns, lAt, coverage }),
    off: lAt / l - 1,
    wire: wire.title,
    bare: wire.bare,
    overall: wire.overall,
    thickest,
    fits: (wire.overall <= thickest ? 'fits' : 'crowded') as 'fits' | 'crowded',
    coverage,
    length,
    resistanceDc,
    resistance,
    q,
    selfCapacitance,
    resonance: 1 / (2 * Math.PI * Math.sqrt(lAt * selfCapacitance)),
    flux,
    fluxLimit,
    outcome: outcomeOf(flux, fluxLimit),
    build: `${turns} ${turns === 1 ? 'turn' : 'turns'} of ${wire.title} wire on ${core.title}, cut ${format(length, 'm', 2)}, spread over eleven twelfths of the core`,
  };
}

/**
 * Bare diameter over the mean pitch of a winding spread over the core but for its gap; touching
 * turns are the most there can be.
 */
function pitchShare(core: Core, wire: Wire, turns: number): number {
  const mean = (Math.PI * (core.size.outer + core.size.inner)) / 2;
  return Math.min(1, (turns * wire.bare) / (mean * (11 / 12)));
}

/** Flux against its guideline: holds to 80 %, close to 100 %. */
export function outcomeOf(flux: number | null, limit: number | null): Outcome | null {
  if (flux === null || limit === null) return null;
  if (flux <= 0.8 * limit) return 'holds';
  return flux <= limit ? 'close' : 'fails';
}
