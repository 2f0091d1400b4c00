import {
  besideEachOther,
  pairLeakage,
  shuntLoss,
  surfaceRise,
} from '../../circuit/broadbandTransformer.ts';
import { fluxGuide, peakFlux } from '../../circuit/toroid.ts';
import { format } from '../../quantity/format.ts';
import { outcomeOf } from './coilRows.ts';
import { type Former, thickestOn } from './former.ts';
import { joinsOf, type WindingForm } from './joins.ts';
import { lMatchInstead } from './lMatchInstead.ts';
import { pickFerrite } from './pickFerrite.ts';
import { pickWire } from './pickWire.ts';
import type { WindingsSeen } from './seen.ts';
import { type TransformerWanted, transformersWanted } from './transformersWanted.ts';
import { wound } from './wound.ts';

/** Copper of broadband windings, m: thicker brings nothing and is in the way. */
const THICKEST = 0.5e-3;

/** Speed of light, m/s. */
export const LIGHT = 299792458;

/** Share of a wavelength that no wire should be longer than: 15°. */
export const SHORT = 1 / 24;

/** Each broadband transformer on its core: turns, wire, loss, heat, how high it goes. */
export function transformerRows(seen: WindingsSeen) {
  return transformersWanted(seen).map((wanted) =>
    transformerRow(wanted, pickFerrite(wanted, seen), seen),
  );
}

const tappedForm = { first: 'tapped', second: 'halves' } as const;

/** One transformer on a given core. */
export function transformerRow(wanted: TransformerWanted, former: Former, seen: WindingsSeen) {
  const { first, second, kind, power, ratio } = wanted;
  const { nominal, tail } = seen;
  const { all, ...on } = wound(wanted, former, seen);
  const { turns, secondTurns } = on;
  const initial = former.ferrite.permeability;
  const reactance = 2 * Math.PI * nominal * former.al * turns ** 2;
  const impedance = (reactance * Math.hypot(on.stores, on.loses)) / initial;
  const { r, x } = besideEachOther(reactance, initial, on.stores, on.loses);
  const wire = pickWire(
    seen.wire.startsWith('awg') ? 'awg' : 'metric',
    thickestOn(former, all),
    THICKEST,
  );
  const form: WindingForm =
    kind === 'trifilar' ? 'trifilar' : wanted.tapped ? tappedForm[wanted.tapped] : 'over';
  const bundle = form === 'trifilar';
  const around = turns * (former.round + Math.PI * wire.overall);
  const length = around + 2 * tail;
  // The second winding lies on the first: its centre is one and a half wires off the core.
  const secondLength = bundle
    ? null
    : secondTurns * (former.round + 3 * Math.PI * wire.overall) + 2 * tail;
  const leakage = pairLeakage(around, (bundle ? 1 : 2) * wire.overall, wire.bare);
  const byLeakage = first / (2 * Math.PI * leakage);
  const longest = Math.max(length, secondLength ?? 0);
  const byLength = (SHORT * LIGHT) / longest;
  const taken = power === null ? null : (power * first) / r;
  const flux =
    power === null ? null : peakFlux(Math.sqrt(power * first), turns, former.area, nominal);
  const fluxLimit = flux === null ? null : fluxGuide(nominal);
  return {
    label: wanted.label,
    does: wanted.does,
    core: former.title,
    form,
    first,
    second,
    power,
    al: former.al,
    ...on,
    ratioOff: turns / secondTurns / ratio - 1,
    inductance: former.al * turns ** 2,
    impedance,
    times: impedance / first,
    shuntR: r,
    shuntX: x,
    loss: shuntLoss(first, r, x),
    taken,
    takenSpeech: taken === null ? null : taken * seen.speechMean,
    rise: taken === null ? null : surfaceRise(taken, former.surface),
    leakage,
    upper: Math.min(byLeakage, byLength),
    upperBy: (byLeakage < byLength ? 'leakage' : 'length') as 'leakage' | 'length',
    angle: (2 * Math.PI * longest * nominal) / LIGHT,
    wire: wire.title,
    bare: wire.bare,
    length,
    secondLength,
    flux,
    fluxLimit,
    outcome: outcomeOf(flux, fluxLimit),
    build: buildLine(form, turns, secondTurns, former, length, secondLength),
    joins: joinsOf(form, former.shape),
    instead: kind === 'coupling' ? lMatchInstead(first, second, nominal) : null,
  };
}

function buildLine(
  form: WindingForm,
  turns: number,
  secondTurns: number,
  former: Former,
  length: number,
  secondLength: number | null,
): string {
  const cut = format(length, 'm', 2);
  const where =
    former.shape === 'ring' ? `on ${former.title}` : `through both holes of ${former.title}`;
  const number = (n: number) => `${n} ${n === 1 ? 'turn' : 'turns'}`;
  if (form === 'trifilar') {
    return `Three wires of ${cut}, twisted together some three times a centimetre, ${number(turns)} ${where}`;
  }
  const over = secondLength === null ? '' : format(secondLength, 'm', 2);
  if (form === 'halves') {
    return `${number(turns)}, then two wires twisted together over them, ${number(secondTurns)} each, ${where}; cut ${cut} for the first, twice ${over} for the others`;
  }
  if (form === 'tapped') {
    return `Two wires of ${cut}, twisted together some three times a centimetre, ${number(turns)} ${where}; then ${number(secondTurns)} of ${over} over them`;
  }
  return `${number(turns)}, then ${number(secondTurns)} over them, ${where}; cut ${cut} for the first and ${over} for the second`;
}
