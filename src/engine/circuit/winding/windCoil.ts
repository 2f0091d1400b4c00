import { thickestWire } from '../toroid.ts';
import { type AirCoil, type AirForm, airCoilOf } from './airCoilOf.ts';
import { pickToroid, suitsToroid } from './pickToroid.ts';
import {
  type ToroidCoil,
  type ToroidCore,
  toroidCoil,
  type WireSize,
  wholeTurns,
} from './toroidCoil.ts';

/** What coils are wound from. Plain data. */
export interface WindingStock<C extends ToroidCore, W extends WireSize> {
  /** Cores to choose from, the one to try first at the beginning. */
  readonly row: readonly C[];
  /** Pieces of each; null where there is no end of them. */
  readonly pieces: readonly number[] | null;
  /** Cores that are taken where none of those will do or all are used up. */
  readonly otherwise: readonly C[];
  /** Wires to choose from, thinnest first: the thickest that fits is taken. */
  readonly wires: readonly W[];
  /** How much of the room for one layer the wire may take, 0 to 1: less leaves room to squeeze. */
  readonly fill: number;
  /** Length left at each end, m. */
  readonly tail: number;
  /** Set where coils are wound on air instead. */
  readonly air: AirForm | null;
}

/** A coil on a toroid, as it would be wound. */
export interface RingWound<C extends ToroidCore, W extends WireSize> extends ToroidCoil {
  readonly on: 'ring';
  /** What it was wound for, H. */
  readonly asked: number;
  readonly core: C;
  readonly wire: W;
  /** Diameter over the enamel of the thickest wire that fits in one layer, m. */
  readonly thickest: number;
  /** False where nothing of the stock will do or is left: then the core is one that would. */
  readonly inStock: boolean;
}

/** A coil on air, as it would be wound. */
export interface AirWound extends AirCoil {
  readonly on: 'air';
  /** What it was wound for, H. */
  readonly asked: number;
  readonly form: AirForm;
}

export type WoundCoil<C extends ToroidCore = ToroidCore, W extends WireSize = WireSize> =
  | RingWound<C, W>
  | AirWound;

/**
 * Winds one coil after another at a frequency; of a stock that is counted each takes its piece away.
 * A few microseconds a coil.
 *
 * @param stock what there is
 * @param frequency Hz
 * @param gone cores that are used up already
 * @returns a coil for an inductance, H, and the voltage across it, V rms; 0 for small signals
 */
export function coilWinder<C extends ToroidCore, W extends WireSize>(
  stock: WindingStock<C, W>,
  frequency: number,
  gone: readonly C[] = [],
): (l: number, voltage: number) => WoundCoil<C, W> {
  const { row, otherwise, air } = stock;
  const left = stock.pieces === null ? null : [...stock.pieces];
  for (const core of gone) use(row.indexOf(core));
  return (l, voltage) => {
    if (air !== null) return onAir(l, stock, air, frequency);
    if (left === null) {
      return onCore(l, pickToroid(row, l, frequency, voltage) as C, true, stock, frequency);
    }
    const at = row.findIndex(
      (core, i) => (left[i] ?? 0) > 0 && suitsToroid(core, l, frequency, voltage),
    );
    use(at);
    const core = row[at];
    return core
      ? onCore(l, core, true, stock, frequency)
      : onCore(l, pickToroid(otherwise, l, frequency, voltage) as C, false, stock, frequency);
  };

  function use(at: number) {
    if (left !== null && at >= 0) left[at] = (left[at] ?? 0) - 1;
  }
}

/** The same coil for another inductance: on the same core, or on air. */
export function rewound<C extends ToroidCore, W extends WireSize>(
  coil: WoundCoil<C, W>,
  l: number,
  stock: WindingStock<C, W>,
  frequency: number,
): WoundCoil<C, W> {
  return coil.on === 'air'
    ? onAir(l, stock, coil.form, frequency)
    : onCore(l, coil.core, coil.inStock, stock, frequency);
}

function onAir(
  l: number,
  { tail }: { readonly tail: number },
  form: AirForm,
  frequency: number,
): AirWound {
  return { on: 'air', asked: l, form, ...airCoilOf(l, form, tail, frequency) };
}

function onCore<C extends ToroidCore, W extends WireSize>(
  l: number,
  core: C,
  inStock: boolean,
  { wires, tail, fill }: WindingStock<C, W>,
  frequency: number,
): RingWound<C, W> {
  const turns = wholeTurns(l, core.al);
  const thickest = thickestWire(core.size.inner, turns);
  const wire = wires.findLast(({ overall }) => overall <= fill * thickest) ?? (wires[0] as W);
  const coil = toroidCoil(turns, core, wire, tail, frequency);
  return { on: 'ring', asked: l, core, wire, thickest, inStock, ...coil };
}
