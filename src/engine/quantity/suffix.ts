import { tidy } from './tidy.ts';
import { prefixPower, type Unit, unitRow, units } from './units.ts';

/** What the letters after a number are worth: a power of ten and a factor. */
export interface Worth {
  readonly power: number;
  readonly factor: number;
}

/**
 * Understands the letters after a number as a prefix, a unit or both, for a field in `unit`.
 * Prefixes keep their case (m milli, M mega) except before hertz, where nobody means milli; the
 * unit's own letters may be typed in either.
 *
 * @return null if the letters don't belong to this unit
 */
export function suffix(letters: string, unit: Unit): Worth | null {
  const row = unitRow(unit);
  if (letters === '') return worth(row.scale);
  const known = spellingsOf(unit);
  const exact = known.get(letters);
  if (exact !== undefined) return worth(exact);
  const bare = prefixOf(letters, unit);
  if (bare !== null) return withBase(bare, unit);
  return spelled(letters, unit);
}

/** A whole unit, with or without a prefix, but no prefix alone. */
export function spelled(letters: string, unit: Unit): Worth | null {
  const known = spellingsOf(unit);
  const exact = known.get(letters);
  if (exact !== undefined) return worth(exact);
  const folded = letters.toLowerCase();
  for (const fold of [false, true]) {
    for (const [spelling, scale] of known) {
      const own = fold ? spelling.toLowerCase() : spelling;
      const typed = fold ? folded : letters;
      if (typed === own) return worth(scale);
      if (!typed.endsWith(own) || !takesPrefix(spelling, unit)) continue;
      const before = prefixOf(letters.slice(0, -own.length), unit);
      if (before !== null) return shift(worth(scale), before);
    }
  }
  return null;
}

/** The unit whose spelling this is, whatever the field: first those that are shown that way. */
export function unitSpelled(letters: string): Unit | null {
  const all = Object.keys(units) as Unit[];
  const named = all.filter((unit) => unit !== '1');
  const shown = named.find((unit) => unitRow(unit).shown === letters);
  return shown ?? named.find((unit) => spelled(letters, unit) !== null) ?? null;
}

/** The power of ten that a prefix letter stands for before this unit, or null. */
export function prefixOf(letters: string, unit: Unit): number | null {
  const plain = letters === 'meg' || letters === 'Meg' ? 'M' : letters;
  if ([...plain].length !== 1) return null;
  const meant = unit === 'Hz' ? (hertzPrefix[plain] ?? plain) : (easyPrefix[plain] ?? plain);
  if (meant === '' || (unit === 'Hz' && !'kMGT'.includes(meant))) return null;
  return Object.hasOwn(prefixPower, meant) ? (prefixPower[meant] ?? null) : null;
}

const hertzPrefix: Readonly<Record<string, string>> = { K: 'k', m: 'M', g: 'G' };

// Capitals of micro, nano, pico and kilo stand for nothing else on a circuit diagram.
const easyPrefix: Readonly<Record<string, string>> = { u: 'µ', U: 'µ', N: 'n', P: 'p', K: 'k' };

function withBase(power: number, unit: Unit): Worth | null {
  const row = unitRow(unit);
  if (unit === '1') return { power, factor: 1 };
  const base = row.prefixed[0];
  const scale = base === undefined ? undefined : row.spellings[base];
  return scale === undefined ? null : shift(worth(scale), power);
}

function takesPrefix(spelling: string, unit: Unit): boolean {
  return unitRow(unit).prefixed.some((one) => tidy(one) === spelling);
}

const shift = ({ power, factor }: Worth, by: number): Worth => ({ power: power + by, factor });

/** Powers of ten are kept apart, so that 4.7 µ is the double nearest to 4.7e-6. */
function worth(scale: number): Worth {
  const power = Math.round(Math.log10(scale));
  return Number(`1e${power}`) === scale ? { power, factor: 1 } : { power: 0, factor: scale };
}

const kept = new Map<Unit, Map<string, number>>();

function spellingsOf(unit: Unit): Map<string, number> {
  const had = kept.get(unit);
  if (had) return had;
  const made = new Map(
    Object.entries(unitRow(unit).spellings).map(([spelling, scale]) => [
      tidy(spelling).replace(/ /g, ''),
      scale,
    ]),
  );
  kept.set(unit, made);
  return made;
}
