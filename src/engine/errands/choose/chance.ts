import { threefry } from '../yield/threefry.ts';

/**
 * A stream of chance: numbers above 0 and below 1, the same ones for the same seed and stream.
 *
 * @param seed, stream whole numbers
 */
export function chanceOf(seed: number, stream: number): () => number {
  const words = new Uint32Array(2);
  let drawn = 0;
  return () => {
    if (drawn % 2 === 0) threefry(seed, stream, drawn / 2, 0, words);
    const word = words[drawn % 2] as number;
    drawn += 1;
    return (word + 0.5) / 2 ** 32;
  };
}
