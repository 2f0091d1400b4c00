/**
 * A part of a stage that most changes leave alone, with its last answer. It is given everything but
 * what it doesn't look at, so that the compiler sees to that; it is worked anew when anything else
 * has changed.
 *
 * @param idle what `work` doesn't look at
 * @param work a pure function
 */
export function rememberBut<Given extends object, Idle extends keyof Given, Answer>(
  idle: readonly Idle[],
  work: (given: Omit<Given, Idle>) => Answer,
): (given: Given) => Answer {
  const unseen: ReadonlySet<PropertyKey> = new Set(idle);
  return lastOf(work, (given: Given, old) => {
    for (const key in given) {
      if (!Object.is(given[key], old[key]) && !unseen.has(key)) return false;
    }
    return true;
  });
}

/**
 * The same the other way round: it is given only what it looks at.
 *
 * @param keys what `work` looks at
 * @param work a pure function
 */
export function rememberOf<Given extends object, Key extends keyof Given, Answer>(
  keys: readonly Key[],
  work: (given: Pick<Given, Key>) => Answer,
): (given: Given) => Answer {
  return lastOf(work, (given: Given, old) => keys.every((key) => Object.is(given[key], old[key])));
}

/** Keeps the last answer as long as what it was given is the same. */
function lastOf<Given, Answer>(
  work: (given: Given) => Answer,
  isSame: (given: Given, old: Given) => boolean,
): (given: Given) => Answer {
  let last: { readonly given: Given; readonly answer: Answer } | null = null;
  return (given) => {
    if (last === null || !isSame(given, last.given)) last = { given, answer: work(given) };
    return last.answer;
  };
}
