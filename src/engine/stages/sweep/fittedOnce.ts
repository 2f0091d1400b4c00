import type { Problem } from '../../fields/stage.ts';
import { type Fitted, fitted } from './fitted.ts';
import { cannot } from './problems.ts';
import type { SweepSeen } from './seen.ts';
import { type Understood, understand } from './understand.ts';

interface Once {
  readonly understood: Understood;
  readonly problem: Problem | null;
  readonly found: Fitted | null;
}

let last: { seen: SweepSeen; once: Once } | null = null;

/** What a text and its fit depend on; the rest of what the stage reads only adds advice. */
const matter = [
  'file',
  'columnFrequency',
  'columnLevel',
  'columnSecond',
  'columnsAre',
  'unit',
  'rt',
  'through',
  'throughVolts',
  'levelFree',
  'shunt',
  'shuntFree',
  'c0Known',
  'use',
  'c0Read',
  'meterStray',
  'beside',
] as const satisfies readonly (keyof SweepSeen)[];

/**
 * Understands the text and fits it, or answers what it did last where nothing that matters to them
 * has changed: the frequency on the Plan is typed letter by letter.
 */
export function fittedOnce(seen: SweepSeen, file: string): Once {
  if (last !== null && matter.every((key) => Object.is(last?.seen[key], seen[key])))
    return last.once;
  const understood = understand({ ...seen, file });
  const problem = cannot(understood);
  const once = { understood, problem, found: problem === null ? fitted(seen, understood) : null };
  last = { seen, once };
  return once;
}
