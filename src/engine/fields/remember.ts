/**
 * A part of a stage that most changes leave alone, with its last answer. It is given everything
 * but what it doesn't look at, so that the compiler sees to that; it is worked anew when anything
 * else has changed.
 *
 * @param idle what `work` doesn't look at
 * @param work a pure function; `beside` is one more figure
 */
export function remember<Seen extends object, Idle extends keyof Seen, Answer>(
  idle: readonly Idle[],
  work: (seen: Omit<Seen, Idle>, beside: number) => Answer,
): (seen: Seen, beside: number) => Answer {
  const unseen: ReadonlySet<PropertyKey> = new Set(idle);
  let last: { seen: Seen; beside: number; answer: Answer } | null = null;
  const isSame = (seen: Seen, old: Seen): boolean => {
    if (seen === old) return true;
    for (const key in seen) {
      if (!Object.is(seen[key], old[key]) && !unseen.has(key)) return false;
    }
    return true;
  };
  return (seen, beside) => {
    if (last === null || last.beside !== beside || !isSame(seen, last.seen)) {
      last = { seen, beside, answer: work(seen, beside) };
    }
    return last.answer;
  };
}
