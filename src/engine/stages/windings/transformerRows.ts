import { permeability, shuntLoss, turnsForReactance } from '../../circuit/broadbandTransformer.ts';
import { fluxGuide, peakFlux, thickestWire, wireLength } from '../../circuit/toroid.ts';
import { TURNS_TOLERANCE } from '../../circuit/turnsRatio.ts';
import type { Core } from '../../data/cores.ts';
import { format } from '../../quantity/format.ts';
import { outcomeOf } from './coilRows.ts';
import { pickPowerFerrite, pickSmallFerrite } from './pickFerrite.ts';
import { pickWire } from './pickWire.ts';
import type { WindingsSeen } from './seen.ts';

/** A broadband winding that the rig needs. */
export interface TransformerWanted {
  readonly label: string;
  readonly kind: 'output' | 'choke' | 'trifilar' | 'coupling';
  readonly core: Core;
  /** Impedances, Ω; no second for a choke. */
  readonly first: number;
  readonly second: number | null;
  /** Turns of the first winding over the second; 1 for a choke and a trifilar winding. */
  readonly ratio: number;
  /** Whole turns of first and second that the ratio is made of, or null where it is free. */
  readonly whole: readonly [number, number] | null;
  /** Voltage across the first winding at full power, V rms; null where the signal is small. */
  readonly voltage: number | null;
  /** Turns that the user wants on the first winding. */
  readonly asked: number | null;
}

/** Copper of broadband windings, m: thicker brings nothing and is in the way. */
const THICKEST = 0.5e-3;

/** What the stages before ask for. */
function transformersWanted(seen: WindingsSeen): TransformerWanted[] {
  const { collectorLoad, collectorPower, transformerRatio, antenna } = seen;
  const list: TransformerWanted[] = [];
  if (collectorLoad !== null && collectorPower !== null) {
    const core = pickPowerFerrite(seen.transformerCore, collectorPower);
    const voltage = Math.sqrt(collectorPower * collectorLoad);
    const at = { core, first: collectorLoad, voltage, asked: null } as const;
    if (transformerRatio !== null) {
      const { transformerPrimary: p, transformerSecondary: s } = seen;
      list.push({
        ...at,
        label: 'Output transformer',
        kind: 'output',
        second: antenna,
        ratio: 1 / transformerRatio,
        whole: p === null || s === null ? null : [p, s],
      });
    }
    list.push({
      ...at,
      label: 'Collector choke',
      kind: 'choke',
      second: null,
      ratio: 1,
      whole: null,
    });
  }
  const small = { core: pickSmallFerrite(seen.modulatorCore), voltage: null, whole: null } as const;
  list.push({
    ...small,
    label: 'Modulator',
    kind: 'trifilar',
    first: seen.modulatorImpedance,
    second: seen.modulatorImpedance,
    ratio: 1,
    asked: seen.modulatorTurns,
  });
  for (const { place, collector, following, turns } of seen.couplings ?? []) {
    if (place === null || collector === null || following === null || turns === null) continue;
    list.push({
      ...small,
      label: place,
      kind: 'coupling',
      first: collector,
      second: following,
      ratio: turns,
      asked: null,
    });
  }
  return list;
}

/** Each broadband winding on its core: turns, impedance, loss, flux. */
export function transformerRows(seen: WindingsSeen) {
  return transformersWanted(seen).map((wanted) => transformerRow(wanted, seen));
}

function transformerRow(wanted: TransformerWanted, seen: WindingsSeen) {
  const { core, first, second, voltage, kind } = wanted;
  const { nominal, tail } = seen;
  const { size, al, mix } = core;
  const { stores, loses } = permeability(mix.permeability, mix.relaxation, nominal);
  const left = Math.hypot(stores, loses) / mix.permeability;
  const { turnsExact, turnsFlux } = fewestTurns(wanted, seen, left);
  const [turns, secondTurns] = wholeTurns(wanted, turnsExact, turnsFlux);
  // The winding's own impedance: jωL·(μ′ − jμ″)/μi.
  const reactance = 2 * Math.PI * nominal * al * turns ** 2;
  const impedance = reactance * left;
  const all = kind === 'trifilar' ? 3 * turns : turns + (secondTurns ?? 0);
  const wire = pickWire(
    seen.wire === 'awg' ? 'awg' : 'metric',
    thickestWire(size.inner, all),
    THICKEST,
  );
  const length = wireLength(size, wire.overall, turns, tail);
  // The second winding lies on the first: its centre is one and a half wires off the core.
  const secondLength =
    secondTurns === null || kind === 'trifilar'
      ? null
      : wireLength(size, 3 * wire.overall, secondTurns, tail);
  const flux = voltage === null ? null : peakFlux(voltage, turns, size.area, nominal);
  const fluxLimit = flux === null ? null : fluxGuide(nominal);
  return {
    label: wanted.label,
    core: core.title,
    first,
    second,
    al,
    permeability: left,
    turnsExact,
    turnsFlux,
    turns,
    secondTurns,
    inductance: al * turns ** 2,
    impedance,
    times: impedance / first,
    loss: shuntLoss(
      first,
      (reactance * loses) / mix.permeability,
      (reactance * stores) / mix.permeability,
    ),
    wire: wire.title,
    bare: wire.bare,
    length,
    secondLength,
    flux,
    fluxLimit,
    outcome: outcomeOf(flux, fluxLimit),
    build: buildLine(kind, turns, secondTurns, core.title, length, secondLength),
  };
}

/** Turns on the winding with fewer of them: by impedance, and by flux. Not rounded. */
function fewestTurns(wanted: TransformerWanted, seen: WindingsSeen, left: number) {
  const { core, first, ratio, voltage } = wanted;
  const few = Math.min(1, 1 / ratio);
  const onFirst = turnsForReactance(first, seen.reactanceTimes, core.al, left, seen.nominal);
  const guide = Math.SQRT2 * Math.PI * core.size.area * seen.nominal * fluxGuide(seen.nominal);
  return {
    turnsExact: onFirst * few,
    turnsFlux: voltage === null ? null : (voltage / guide) * few,
  };
}

/**
 * Whole turns of both windings. Where the ratio is made of whole turns both are multiplied; where
 * it is free, the smaller winding grows until the ratio is met within 4 %.
 */
function wholeTurns(
  wanted: TransformerWanted,
  turnsExact: number,
  turnsFlux: number | null,
): [number, number | null] {
  const { kind, ratio, whole, asked } = wanted;
  const least = Math.max(1, Math.ceil(Math.max(turnsExact, turnsFlux ?? 0)));
  if (kind === 'choke') return [least, null];
  if (kind === 'trifilar') return [asked ?? least, asked ?? least];
  if (whole) {
    const k = Math.ceil(least / Math.min(...whole));
    return [k * whole[0], k * whole[1]];
  }
  const few = growUntilMet(least, Math.max(ratio, 1 / ratio));
  const many = Math.round(few * Math.max(ratio, 1 / ratio));
  return ratio >= 1 ? [many, few] : [few, many];
}

/** The fewest turns, from `least` on, whose product with the ratio is whole within 4 %. */
function growUntilMet(least: number, steep: number): number {
  let few = least;
  while (Math.abs(Math.round(few * steep) / (few * steep) - 1) > TURNS_TOLERANCE) few += 1;
  return few;
}

function buildLine(
  kind: TransformerWanted['kind'],
  turns: number,
  secondTurns: number | null,
  core: string,
  length: number,
  secondLength: number | null,
): string {
  const cut = format(length, 'm', 2);
  if (kind === 'choke') return `${turns} turns on ${core}, cut ${cut}`;
  if (kind === 'trifilar') {
    return `Three wires twisted lightly, ${cut} each, ${turns} turns together on ${core}; mark the starts: the end of the second goes to the start of the third`;
  }
  return `${turns} turns, then ${secondTurns} turns over them, on ${core}; cut ${cut} for the first and ${secondLength === null ? '' : format(secondLength, 'm', 2)} for the second`;
}
