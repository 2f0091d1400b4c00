import { format } from '../../quantity/format.ts';

/**
 * What to do about the final's heat, in a sentence.
 *
 * @param speech, tone heat sink needed, K/W; null where the bare case is enough, 0 or less where
 *   no sink can do it
 * @param toCase junction to case, K/W; null where the package isn't meant for a heat sink
 */
export function sinkAdvice(
  speech: number | null,
  tone: number | null,
  toCase: number | null,
): string {
  const one = (sink: number | null, what: string): string => {
    if (sink === null) return `For ${what} none is needed: the free-standing case is enough`;
    if (toCase === null) return `For ${what} this package gets too hot, and takes no heat sink`;
    if (sink <= 0) return `For ${what} no heat sink is large enough`;
    return `For ${what} a heat sink of ${format(sink, 'K/W', 2)} or less`;
  };
  return `${one(speech, 'speech')}. ${one(tone, 'a steady tone')}.`;
}
