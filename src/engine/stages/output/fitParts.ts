import { coilWinder, rewound } from '../../circuit/winding/windCoil.ts';
import { bestPair, nearest, type Series } from '../../quantity/preferred.ts';
import type { Shelf, ShelfCoil } from '../cores/fields.ts';
import type { Part } from './part.ts';

/** How the parts are made. */
export interface FitAsked {
  readonly nominal: number;
  readonly fitted: 'exact' | 'e24' | 'e12' | 'e6' | 'e24pair' | 'e12pair' | 'e6pair';
  readonly coilsFitted: 'trimmed' | 'wound';
  /** Null: as wound. */
  readonly coilQ: number | null;
  readonly selfCapacitance: number | null;
  readonly capacitorQ: number;
  /** Cores and wire to choose from. */
  readonly shelf: Shelf;
}

/** A part as it is built. */
export interface Fitted {
  readonly part: Part;
  /** What is to be bought or wound: a trap's capacitor less what the coil has itself. F or H. */
  readonly wanted: number;
  /** F or H. */
  readonly value: number;
  /** Single capacitors that make it up, F; empty for coils and measured parts. */
  readonly singles: readonly number[];
  readonly measured: boolean;
  readonly q: number;
  /** The coil's own capacitance, F; of a capacitor 0. */
  readonly own: number;
  readonly wound: ShelfCoil | null;
}

/** Smallest single capacitor worth fitting as one of two, F. */
const SMALLEST = 1e-12;

/** Less than this across a coil is nothing, F. */
const NOTHING = 1e-16;

/**
 * Every part as built: capacitors from a series, coils trimmed or of whole turns, or as measured.
 *
 * @param volts across each part at full power, V rms: chooses the core
 */
export function fitParts(
  parts: readonly Part[],
  asked: FitAsked,
  volts: readonly number[],
  measured: ReadonlyMap<string, number>,
): Fitted[] {
  const out: Fitted[] = [];
  const wind = coilWinder(asked.shelf, asked.nominal);
  parts.forEach((part, k) => {
    if (part.kind !== 'coil') {
      const own = part.kind === 'across' ? (out.at(-1)?.own ?? 0) : 0;
      // Where the coil's own capacitance is all that the trap wants, nothing is fitted.
      if (part.exact - own >= NOTHING)
        out.push(capacitorOf(part, part.exact - own, asked, measured));
      return;
    }
    const next = parts[k + 1];
    let wound = wind(part.exact, volts[k] ?? 0);
    let { own, wanted } = withAcross(part, next, wound, asked, measured);
    if (wanted !== part.exact) {
      // A trap's coil is another than designed: its turns, and with them what it has itself, follow.
      wound = rewound(wound, wanted, asked.shelf, asked.nominal);
      ({ own, wanted } = withAcross(part, next, wound, asked, measured));
    }
    const known = measured.get(part.label);
    out.push({
      part,
      wanted,
      value: known ?? (asked.coilsFitted === 'wound' ? wound.l : wanted),
      singles: [],
      measured: known !== undefined,
      q: asked.coilQ ?? wound.q,
      own,
      wound,
    });
  });
  return out;
}

/** What a coil has itself, F, and what it is to be with the capacitor across it that is fitted, H. */
function withAcross(
  part: Part,
  next: Part | undefined,
  wound: ShelfCoil,
  asked: FitAsked,
  measured: ReadonlyMap<string, number>,
): { own: number; wanted: number } {
  const own = asked.selfCapacitance ?? wound.selfCapacitance;
  if (part.notch === null || next?.kind !== 'across') return { own, wanted: part.exact };
  const across =
    next.exact - own >= NOTHING
      ? capacitorOf(next, next.exact - own, asked, measured).value + own
      : own;
  // A trap's coil is trimmed until the notch is where it belongs.
  return { own, wanted: 1 / ((2 * Math.PI * part.notch) ** 2 * across) };
}

function capacitorOf(
  part: Part,
  wanted: number,
  { fitted, capacitorQ }: FitAsked,
  measured: ReadonlyMap<string, number>,
): Fitted {
  const known = measured.get(part.label);
  const singles = known === undefined ? singlesFor(wanted, fitted) : [];
  const value = known ?? singles.reduce((sum, one) => sum + one, 0);
  return {
    part,
    wanted,
    value,
    singles,
    measured: known !== undefined,
    q: capacitorQ,
    own: 0,
    wound: null,
  };
}

function singlesFor(wanted: number, fitted: FitAsked['fitted']): readonly number[] {
  if (fitted === 'exact') return [wanted];
  const series = seriesOf(fitted);
  return fitted.endsWith('pair')
    ? bestPair(wanted, series, SMALLEST).parts
    : [nearest(wanted, series)];
}

/** The series that capacitors are taken from. */
export const seriesOf = (fitted: string): Series =>
  fitted.slice(0, fitted.endsWith('pair') ? -4 : undefined).toUpperCase() as Series;
