/** Every way to put n of so many crystals in order. */
export function* every(count: number, n: number): Generator<number[], void, void> {
  const taken: number[] = [];
  function* fill(): Generator<number[], void, void> {
    if (taken.length === n) {
      yield [...taken];
      return;
    }
    for (let c = 0; c < count; c += 1) {
      if (taken.includes(c)) continue;
      taken.push(c);
      yield* fill();
      taken.pop();
    }
  }
  yield* fill();
}

/** How many ways there are. */
export function waysOf(count: number, n: number): number {
  let ways = 1;
  for (let i = 0; i < n; i += 1) ways *= count - i;
  return ways;
}
