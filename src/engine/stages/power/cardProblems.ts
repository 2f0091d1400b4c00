import type { Problem } from '../../fields/stage.ts';
import type { ReadCard } from './readCard.ts';

/** Names in one message. */
const MOST = 8;

/** What of a pasted card isn't used. */
export function cardProblems(read: ReadCard | null): Problem[] {
  if (read === null) return [];
  const problems: Problem[] = [];
  const warn = (says: string, help?: string) =>
    problems.push({
      field: 'power.card',
      weight: 'warns',
      says,
      ...(help === undefined ? {} : { try: help }),
    });
  if (Object.keys(read.values).length === 0) {
    warn(
      'Nothing on this card could be used; that of the chosen transistor stays.',
      'A card looks like: .model mine NPN (IS=1e-13 BF=100 RB=5 CJC=30p TF=0.7n)',
    );
  }
  for (const says of read.says.slice(0, MOST)) warn(says);
  if (read.unknown.length > 0) {
    warn(
      `No parameter of a bipolar transistor: ${listed(read.unknown)}.`,
      'Names are those of the published notation, such as IS, BF, RB, CJC, TF.',
    );
  }
  if (read.leftOut.length > 0) {
    warn(`The equations used here leave out: ${listed(read.leftOut)}.`);
  }
  return problems;
}

const listed = (names: readonly string[]) =>
  names.length > MOST
    ? `${names.slice(0, MOST).join(', ')} and ${names.length - MOST} more`
    : names.join(', ');
