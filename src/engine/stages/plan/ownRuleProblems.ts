import type { Problem } from '../../fields/stage.ts';
import { MOST_LINES, type OwnRow } from './readOwnRules.ts';

/** What is to be said of the user's own lines. */
export function ownRuleProblems(rows: readonly OwnRow[], tooMany: number): Problem[] {
  const problems: Problem[] = rows
    .filter(({ note }) => note !== '')
    .slice(0, 3)
    .map(({ line, note }) => ({
      field: 'plan.ownRules',
      weight: 'warns',
      says: `Line ${line} is left out: ${note}.`,
      try: 'A line is like “1.7 – 35 MHz: 40 dB or −36 dBm”. Where no line holds, the single figure does.',
    }));
  if (tooMany > 0) {
    problems.push({
      field: 'plan.ownRules',
      weight: 'warns',
      says: `Only the first ${MOST_LINES} lines are taken; ${tooMany} more are left out.`,
    });
  }
  return problems;
}
