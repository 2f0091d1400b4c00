import { type Choices, departureOf, jointParts } from '../../circuit/jointParts.ts';
import type { Ladder } from '../../circuit/ladder.ts';
import { type PartChain, partChain } from '../../circuit/partChain.ts';
import { type Fitted, type Fitting, seriesOf } from './chooseCapacitor.ts';
import type { Owned } from './ownedParts.ts';
import { partMenu } from './partMenu.ts';
import { shareOut, stockMenu } from './stockMenu.ts';
import type { WantedResponse } from './wantedResponse.ts';

/** What is fitted at one place. */
export interface Choice {
  /** What the design asks for, F. */
  readonly exact: number;
  /** Chosen together with all others. */
  readonly chosen: Fitted;
  /** Nearest by itself. */
  readonly nearest: Fitted;
}

/** The parts of a whole ladder. */
export interface FittedParts {
  /** For each coupling capacitor. */
  readonly coupling: readonly Choice[];
  /** For each position; null where there is no aligning capacitor. */
  readonly series: readonly (Choice | null)[];
  /** Places for which no owned capacitor was left: their values are exact. */
  readonly missing: number;
  /** Weighted sum of squares of the departure, dB²: exact values, nearest ones, those chosen. */
  readonly sums: { readonly exact: number; readonly nearest: number; readonly chosen: number };
}

/** An owned capacitor is not moved to a place where it is further off than this, as a factor. */
const WITHIN = 2;
/** Starts besides the nearest values: all capacitors a twentieth larger, and smaller. */
const SCALES = [0.95, 1.05];
/** A departure this small is not worth going on for, dB rms. */
const ENOUGH = 0.002;

/**
 * Chooses the capacitors of a ladder from what is to be had, all together, on its real response.
 *
 * @param real the ladder with exact values, with its real crystals and between its real ends
 */
export function fitParts(
  real: Ladder,
  wanted: WantedResponse,
  fitting: Fitting,
  owned: readonly Owned[],
): FittedParts {
  const chain = partChain(real, wanted.frequency);
  const exact = chain.places.map(({ of, at }) => real[of][at] ?? 0);
  const found = choose(chain, wanted, fitting, owned, exact);
  const choice = (of: 'coupling' | 'series', at: number): Choice | null => {
    const part = chain.places.findIndex((place) => place.of === of && place.at === at);
    const [chosen, nearest] = [found.chosen[part], found.nearest[part]];
    return chosen && nearest ? { exact: exact[part] ?? 0, chosen, nearest } : null;
  };
  const sum = (fitted: readonly Fitted[]) =>
    departureOf(
      chain,
      wanted,
      Float64Array.from(fitted, ({ value }) => value),
    );
  return {
    coupling: Array.from(real.coupling, (c, i) => choice('coupling', i) ?? same(c)),
    series: Array.from(real.series, (_, i) => choice('series', i)),
    missing: found.missing,
    sums: {
      exact: sum(exact.map(bare)),
      nearest: sum(found.nearest),
      chosen: sum(found.chosen),
    },
  };
}

const bare = (value: number): Fitted => ({ value, parts: [] });
const same = (value: number): Choice => ({
  exact: value,
  chosen: bare(value),
  nearest: bare(value),
});

interface Found {
  readonly chosen: readonly Fitted[];
  readonly nearest: readonly Fitted[];
  readonly missing: number;
}

function choose(
  chain: PartChain,
  wanted: WantedResponse,
  fitting: Fitting,
  owned: readonly Owned[],
  exact: readonly number[],
): Found {
  if (fitting === 'exact') {
    return { chosen: exact.map(bare), nearest: exact.map(bare), missing: 0 };
  }
  const enough = ENOUGH ** 2 * wanted.weights;
  if (fitting === 'own') return fromStock(chain, wanted, owned, exact, enough);
  const menuOf = new Map(exact.map((c) => [c, partMenu(c, fitting)]));
  const menus = exact.map((c) => menuOf.get(c) ?? partMenu(c, fitting));
  const choices: Choices = { menus: menus.map(({ values }) => values) };
  const nearest = Int32Array.from(menus, (menu) => menu.nearest);
  const scaled = SCALES.map((scale) =>
    Int32Array.from(menus, ({ values }, i) => nearestEntry(values, (exact[i] ?? 0) * scale)),
  );
  const tries = seriesOf(fitting)[1] === 'single' ? 2 : 1;
  const { choice } = jointParts(chain, wanted, choices, [nearest, ...scaled], { tries, enough });
  const fitted = (entries: Int32Array) =>
    menus.map((menu, i) => menu.fitted[entries[i] ?? 0] ?? bare(exact[i] ?? 0));
  return { chosen: fitted(choice), nearest: fitted(nearest), missing: 0 };
}

function fromStock(
  chain: PartChain,
  wanted: WantedResponse,
  owned: readonly Owned[],
  exact: readonly number[],
  enough: number,
): Found {
  const menu = stockMenu(owned, exact);
  const start = shareOut(menu, exact);
  const fitted = (entries: Int32Array) =>
    exact.map((c, i) => menu.fitted[entries[i] ?? -1] ?? bare(c));
  const missing = start.filter((entry) => entry < 0).length;
  if (missing > 0) return { chosen: fitted(start), nearest: fitted(start), missing };
  const choices: Choices = {
    menus: exact.map(() => menu.values),
    limits: exact.map((c) => [
      menu.values.findIndex((value) => value >= c / WITHIN),
      menu.values.findLastIndex((value) => value <= c * WITHIN),
    ]),
    stock: menu.stock,
  };
  const { choice } = jointParts(chain, wanted, choices, [start], { tries: 1, enough, pairs: 1000 });
  return { chosen: fitted(choice), nearest: fitted(start), missing: 0 };
}

function nearestEntry(values: Float64Array, value: number): number {
  let best = 0;
  for (let i = 1; i < values.length; i += 1) {
    if (Math.abs((values[i] ?? 0) - value) < Math.abs((values[best] ?? 0) - value)) best = i;
  }
  return best;
}
