import type { Problem } from '../../fields/stage.ts';
import type { Fitted } from './fitParts.ts';
import type { Measured } from './readMeasured.ts';

/** What there is to say of measured parts: lines not understood, parts that are not there. */
export function measuredCautions({ values, notes }: Measured, parts: readonly Fitted[]): Problem[] {
  const there = new Set(parts.map(({ part }) => part.label));
  const strange = [...values.keys()].filter((label) => !there.has(label));
  const warn = (says: string, advice: string): Problem => ({
    field: 'output.measured',
    weight: 'warns',
    says,
    try: advice,
  });
  const problems: Problem[] = [];
  const [first] = notes;
  if (first !== undefined) {
    problems.push(
      warn(
        `“${first}” is not understood${notes.length > 1 ? `, nor are ${notes.length - 1} more` : ''}.`,
        'Write the part and its value: L1 1.51 µH, or C2 268 pF.',
      ),
    );
  }
  if (strange.length > 0) {
    problems.push(
      warn(
        `The network has no ${strange.slice(0, 3).join(', no ')}.`,
        'Take the names from the table of parts.',
      ),
    );
  }
  return problems;
}
