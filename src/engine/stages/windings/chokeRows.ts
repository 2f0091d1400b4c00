import {
  besideEachOther,
  leftByDirectCurrent,
  surfaceRise,
  turnsForReactance,
} from '../../circuit/broadbandTransformer.ts';
import { ferritePermeability } from '../../circuit/ferritePermeability.ts';
import { fluxGuide, peakFlux } from '../../circuit/toroid.ts';
import type { Choke } from '../../data/chokes.ts';
import { format } from '../../quantity/format.ts';
import { type ChokeWanted, chokesWanted } from './chokesWanted.ts';
import { outcomeOf } from './coilRows.ts';
import { type Former, formerOf, formers, thickestOn } from './former.ts';
import { pickChoke } from './pickChoke.ts';
import { smallestFor } from './pickFerrite.ts';
import { pickWire } from './pickWire.ts';
import type { WindingsSeen } from './seen.ts';

/** Copper of a choke, m. */
const THICKEST = 0.5e-3;

const sizes = ['FT37-61', 'FT50-61', 'FT82-61', '2xFT82-61'] as const;

/** Each choke wound on ferrite, and the ready-made one that does the same. */
export function chokeRows(seen: WindingsSeen, own: readonly Choke[]) {
  return chokesWanted(seen).map((wanted) => chokeRow(wanted, formerFor(wanted, seen), seen, own));
}

function formerFor({ power }: ChokeWanted, seen: WindingsSeen): Former {
  const wanted = power === null ? seen.modulatorCore : seen.transformerCore;
  const auto = power === null ? 'FT37-43' : (sizes[smallestFor(power)] ?? 'FT82-61');
  return formerOf(wanted) ?? formerOf(auto) ?? (formers[0] as Former);
}

function chokeRow(wanted: ChokeWanted, former: Former, seen: WindingsSeen, own: readonly Choke[]) {
  const { resistance, direct, power } = wanted;
  const { nominal, tail, reactanceTimes } = seen;
  const { stores, loses } = ferritePermeability(former.ferrite.curve, nominal);
  const initial = former.ferrite.permeability;
  const left = Math.hypot(stores, loses) / initial;
  const turnsExact = turnsForReactance(resistance, reactanceTimes, former.al, left, nominal);
  const voltage = power === null ? null : Math.sqrt(power * resistance);
  const guide = Math.SQRT2 * Math.PI * former.area * nominal * fluxGuide(nominal);
  const turnsFlux = voltage === null ? null : voltage / guide;
  const turns = Math.max(1, Math.ceil(Math.max(turnsExact, turnsFlux ?? 0)));
  const reactance = 2 * Math.PI * nominal * former.al * turns ** 2;
  const field = (turns * direct) / former.path;
  const kept = leftByDirectCurrent(field, initial, former.ferrite.saturation);
  const impedance = reactance * left * kept;
  const { r } = besideEachOther(reactance, initial, stores, loses);
  const taken = power === null ? null : (power * resistance) / r;
  const flux = voltage === null ? null : peakFlux(voltage, turns, former.area, nominal);
  const fluxLimit = flux === null ? null : fluxGuide(nominal);
  const wire = pickWire(
    seen.wire.startsWith('awg') ? 'awg' : 'metric',
    thickestOn(former, turns),
    THICKEST,
  );
  const length = turns * (former.round + Math.PI * wire.overall) + 2 * tail;
  const needed = (reactanceTimes * resistance) / (2 * Math.PI * nominal);
  const ready = pickChoke(needed, nominal, direct, own);
  return {
    label: wanted.label,
    does: wanted.does,
    resistance,
    direct,
    needed,
    core: former.title,
    al: former.al,
    stores,
    loses,
    turnsExact,
    turnsFlux,
    turns,
    inductance: former.al * turns ** 2,
    field,
    kept,
    impedance,
    times: impedance / resistance,
    taken,
    rise: taken === null ? null : surfaceRise(taken, former.surface),
    flux,
    fluxLimit,
    outcome: outcomeOf(flux, fluxLimit),
    wire: wire.title,
    bare: wire.bare,
    length,
    build: `${turns} ${turns === 1 ? 'turn' : 'turns'} ${former.shape === 'ring' ? 'on' : 'through both holes of'} ${former.title}, cut ${format(length, 'm', 2)}`,
    ready: ready && `${format(ready.l, 'H', 2)}, ${ready.make}`,
    readyL: ready?.l ?? null,
    readyResonance: ready?.resonance ?? null,
    readyMost: ready?.most ?? null,
    readyTimes:
      ready === null
        ? null
        : (2 * Math.PI * nominal * ready.l) / (1 - (nominal / ready.resonance) ** 2) / resistance,
  };
}
