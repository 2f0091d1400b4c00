/** Part of some work, its progress between two shares of the whole. */
export function* between<A>(
  part: Generator<number, A, void>,
  from: number,
  to: number,
): Generator<number, A, void> {
  for (;;) {
    const step = part.next();
    if (step.done) return step.value;
    yield from + (to - from) * step.value;
  }
}
