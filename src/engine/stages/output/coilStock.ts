import { thickestWire } from '../../circuit/toroid.ts';
import { pickToroid } from '../../circuit/winding/pickToroid.ts';
import { type ToroidCoil, toroidCoil, wholeTurns } from '../../circuit/winding/toroidCoil.ts';
import { type Core, cores } from '../../data/cores.ts';
import { type Wire, wires } from '../../data/wires.ts';

/** Above this frequency mix 6 is taken, below it mix 2, Hz. */
const MIX_SPLIT = 10e6;

/** Wire thicker than this is too stiff for a toroid by hand, m. */
const STIFFEST = 0.81e-3;

/** Left at each end for soldering, m. */
export const TAIL = 0.04;

/** A coil as it would be wound. */
export interface Wound extends ToroidCoil {
  readonly core: Core;
  readonly wire: Wire;
}

type ToroidMix = Core & { readonly coreQ: number | null };

const rows = new Map(
  ['2', '6'].map((mix) => [
    mix,
    ['T37', 'T44', 'T50', 'T68', 'T80', 'T94', 'T106'].flatMap((size): ToroidMix[] =>
      cores
        .filter(({ key }) => key === `${size}-${mix}`)
        .map((core) => ({ ...core, coreQ: core.mix.coreQ })),
    ),
  ]),
);

const metric = wires.filter(({ system }) => system === 'metric');

/**
 * How a tuned coil comes out of whole turns: the smallest powdered-iron toroid that suffices, the
 * thickest wire that fits in one layer.
 *
 * @param l inductance, H
 * @param frequency Hz
 * @param voltage across it at full power, about, V rms
 */
export function wind(l: number, frequency: number, voltage: number): Wound {
  const row = rows.get(frequency > MIX_SPLIT ? '6' : '2') ?? [];
  const core = pickToroid(row, l, frequency, voltage) as ToroidMix;
  const turns = wholeTurns(l, core.al);
  const room = thickestWire(core.size.inner, turns);
  const fitting = metric.filter(({ bare, overall }) => overall <= room && bare <= STIFFEST);
  const wire = (fitting.at(-1) ?? metric[0]) as Wire;
  return { ...toroidCoil(turns, core, wire, TAIL, frequency), core, wire };
}
