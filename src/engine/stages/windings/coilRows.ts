import { fluxGuide, peakFlux, turnsFor } from '../../circuit/toroid.ts';
import { bunchedRise } from '../../circuit/winding/bunchedRise.ts';
import { SPREAD } from '../../circuit/winding/toroidCoil.ts';
import { coilWinder, type RingWound } from '../../circuit/winding/windCoil.ts';
import type { Wire } from '../../data/wires.ts';
import type { Outcome } from '../../fields/kinds.ts';
import { format } from '../../quantity/format.ts';
import type { ShelfCoil, ShelfCore } from '../cores/fields.ts';
import { coilAdvice } from './coilAdvice.ts';
import type { WindingsSeen } from './seen.ts';
import { shareFor, shareWords } from './shareFor.ts';

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

/** A coil on its core. */
export type RingCoil = RingWound<ShelfCore, Wire>;

/** The coils that the stages before ask for. */
export function coilsWanted(seen: Pick<WindingsSeen, 'coils' | 'seriesL'>): CoilWanted[] {
  const output = (seen.coils ?? []).flatMap(({ label, l, voltage, own }): CoilWanted[] =>
    label === null || l === null ? [] : [{ label, l, voltage, own }],
  );
  return seen.seriesL === null
    ? output
    : [...output, { label: 'Carrier oscillator', l: seen.seriesL, voltage: null, own: null }];
}

/**
 * Each coil on its core: turns, wire, Q, flux. Those of Output are wound as Output has them; the
 * others take what is left of the box.
 */
export function coilRows(seen: WindingsSeen) {
  if (seen.shelf.air !== null) return [];
  const done = new Map((seen.wound ?? []).map(({ label, wound }) => [label, wound]));
  const wind = coilWinder(seen.shelf, seen.nominal, [...done.values()].flatMap(coreTaken));
  return coilsWanted(seen).flatMap((wanted) => {
    const rms = wanted.voltage === null ? 0 : wanted.voltage / Math.SQRT2;
    const coil = done.get(wanted.label) ?? wind(wanted.l, rms);
    return coil.on === 'ring' ? [coilRow(wanted, coil, seen)] : [];
  });
}

const coreTaken = (coil: ShelfCoil): ShelfCore[] =>
  coil.on === 'ring' && coil.inStock ? [coil.core] : [];

function coilRow({ label, l, voltage, own }: CoilWanted, coil: RingCoil, seen: WindingsSeen) {
  const { nominal, testCapacitor } = seen;
  const { core, wire, turns, thickest, length, selfCapacitance } = coil;
  const { size, al, mix } = core;
  const rms = voltage === null ? 0 : voltage / Math.SQRT2;
  const flux = voltage === null ? null : peakFlux(rms, turns, size.area, nominal);
  const fluxLimit = flux === null ? null : fluxGuide(nominal);
  const coverage =
    (turns * Math.asin(Math.min(1, wire.overall / (size.inner - wire.overall)))) / Math.PI;
  const ring = { permeability: mix.permeability, size };
  const lBunched =
    (coil.l * bunchedRise(Math.min(coverage, SPREAD), ring)) / bunchedRise(SPREAD, ring);
  const share = shareFor(l / coil.l, coverage, ring);
  return {
    label,
    core: core.title,
    place: placeOf(coil, seen),
    l,
    al,
    turnsExact: turnsFor(l, al),
    turns,
    lBelow: al * (turns - 1) ** 2,
    lAt: coil.l,
    lAbove: al * (turns + 1) ** 2,
    lLow: coil.l * (1 - mix.tolerance),
    lHigh: coil.l * (1 + mix.tolerance),
    lBunched,
    share,
    dip: 1 / (2 * Math.PI * Math.sqrt(l * (testCapacitor + selfCapacitance))),
    own,
    advice: coilAdvice({ own, wanted: l, turns, lAt: coil.l, lBunched, coverage, core }),
    off: coil.l / l - 1,
    wire: wire.title,
    bare: wire.bare,
    overall: wire.overall,
    thickest,
    fits: (wire.overall <= thickest ? 'fits' : 'crowded') as 'fits' | 'crowded',
    coverage,
    length,
    resistanceDc: coil.resistanceDc,
    resistance: coil.resistance,
    q: coil.q,
    selfCapacitance,
    resonance: coil.resonance,
    flux,
    fluxLimit,
    outcome: outcomeOf(flux, fluxLimit),
    build: `${turns} ${turns === 1 ? 'turn' : 'turns'} of ${wire.title} wire on ${core.title}, cut ${format(length, 'm', 2)}, ${shareWords(share)}`,
  };
}

/** A core of the shelf by its title. */
export const coreTitled = ({ shelf }: WindingsSeen, title?: string): ShelfCore | undefined =>
  [...shelf.row, ...shelf.otherwise].find((core) => core.title === title);

function placeOf({ inStock }: RingCoil, { shelf }: WindingsSeen): 'any' | 'box' | 'lacking' {
  if (!inStock) return 'lacking';
  return shelf.pieces === null ? 'any' : 'box';
}

/** Flux against its guideline: holds to 80 %, close to 100 %. */
export function outcomeOf(flux: number | null, limit: number | null): Outcome | null {
  if (flux === null || limit === null) return null;
  if (flux <= 0.8 * limit) return 'holds';
  return flux <= limit ? 'close' : 'fails';
}
