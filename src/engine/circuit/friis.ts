/** One block of a chain, as plain ratios of power. */
export interface Block {
  /** Available power gain, ratio; below 1 for a loss. */
  readonly gain: number;
  /** Noise factor at 290 K, ratio; for a passive block at 290 K its loss. */
  readonly noiseFactor: number;
  /** True where its noise also reaches the output from the image side (behind the filter). */
  readonly bothSides?: boolean;
}

/** What a chain of blocks does together. */
export interface Cascade {
  /** Gain of the whole chain, ratio. */
  readonly gain: number;
  /** Noise factor of the whole chain referred to its input, ratio. */
  readonly noiseFactor: number;
  /** What each block adds to the noise factor, ratio; together with 1 they give it. */
  readonly added: readonly number[];
  /** Gain before each block, ratio. */
  readonly before: readonly number[];
}

/**
 * Noise factor and gain of blocks in a row: F = F1 + (F2 − 1)/G1 + (F3 − 1)/(G1·G2) + …
 * A block whose noise is heard on both sides of the carrier adds twice its share.
 *
 * @param blocks in the signal's order
 * Source: H. T. Friis, Noise figures of radio receivers, Proc. IRE 32, 1944, p. 419, eq. (17).
 * Departure: the factor 2 for noise that arises behind the filter in a product detector.
 */
export function friis(blocks: readonly Block[]): Cascade {
  const added: number[] = [];
  const before: number[] = [];
  let gain = 1;
  let noiseFactor = 1;
  for (const block of blocks) {
    const share = ((block.bothSides ? 2 : 1) * (block.noiseFactor - 1)) / gain;
    before.push(gain);
    added.push(share);
    noiseFactor += share;
    gain *= block.gain;
  }
  return { gain, noiseFactor, added, before };
}
