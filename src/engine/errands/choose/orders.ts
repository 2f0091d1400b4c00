/**
 * Orders in which a run of n neighbours by frequency is tried first: rising; the extremes at the
 * ends; the extremes in the middle; high and low by turns. Which suits depends on the filter: end
 * positions bear more error than inner ones.
 */
export function orders(n: number): number[][] {
  const rising = [...Array(n).keys()];
  // 0, n−1, 1, n−2 …: the lowest and the highest by turns.
  const outside = rising.map((i) => (i % 2 === 0 ? i / 2 : n - (i + 1) / 2));
  const ends: number[] = [];
  for (const [k, place] of outside.entries()) ends[k % 2 === 0 ? k / 2 : n - (k + 1) / 2] = place;
  const half = Math.ceil(n / 2);
  const inside = [...ends.slice(0, half).reverse(), ...ends.slice(half).reverse()];
  const turns = rising.map((i) => (i % 2 === 0 ? i / 2 : half + (i - 1) / 2));
  return [rising, ends, inside, turns];
}
