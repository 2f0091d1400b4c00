import type { Choke } from '../../data/chokes.ts';
import { parse } from '../../quantity/parse.ts';
import type { Unit } from '../../quantity/units.ts';

/** Name of chokes out of the user's own drawer. */
export const AT_HAND = 'at hand';

/** What a list of chokes says: those understood, and the numbers of the lines that were not. */
export interface ChokesRead {
  readonly chokes: readonly Choke[];
  readonly lost: readonly number[];
}

/**
 * Chokes pasted as lines of inductance, greatest current and self-resonance in any order, each with
 * its unit: `10 µH 0.5 A 36 MHz`. Blank lines and remarks are passed over.
 */
export function readChokes(text: string | null): ChokesRead {
  const chokes: Choke[] = [];
  const lost: number[] = [];
  (text ?? '').split(/\r?\n/).forEach((line, i) => {
    if (/^\s*($|[#!%])/.test(line)) return;
    const choke = chokeOf(line);
    if (choke) chokes.push(choke);
    else lost.push(i + 1);
  });
  return { chokes, lost };
}

function chokeOf(line: string): Choke | null {
  const l = figureIn(line, 'H', /(\d[\d.,]*\s*[nuµμm]?\d*)\s*H(?!z)/i);
  const most = figureIn(line, 'A', /(\d[\d.,]*\s*[µμum]?\d*)\s*A\b/);
  const resonance = figureIn(line, 'Hz', /(\d[\d.,]*\s*[kMG]?\d*)\s*Hz/i);
  if (l === null || most === null || resonance === null) return null;
  return { make: AT_HAND, l, q: 0, qAt: 0, resonance, most, resistance: 0, source: 'as pasted' };
}

/** The figure in front of a unit, above 0; null where there is none. */
function figureIn(line: string, unit: Unit, pattern: RegExp): number | null {
  const found = pattern.exec(line)?.[1];
  if (found === undefined) return null;
  const reading = parse(`${found}${unit}`, unit);
  return reading.kind === 'value' && reading.value > 0 && reading.value < 1e12
    ? reading.value
    : null;
}
