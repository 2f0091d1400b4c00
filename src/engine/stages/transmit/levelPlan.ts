/**
 * Levels along a chain, worked back from its end.
 *
 * @param gains power gain of each block in the signal's order, dB
 * @param last level behind the last block, dBm
 * @return for each point (one more than there are blocks) the gain from there to the end, dB, and
 *   the level, dBm
 */
export function levelPlan(gains: readonly number[], last: number) {
  const onward: number[] = [0];
  for (let i = gains.length - 1; i >= 0; i -= 1) {
    onward.unshift((onward[0] ?? 0) + (gains[i] ?? 0));
  }
  return { onward, levels: onward.map((gain) => last - gain) };
}

/**
 * Loss between a source and a load that don't match, dB: 1 − ((RL − RS)/(RL + RS))².
 *
 * @param load Ω
 * @param source Ω
 */
export function mismatchLoss(load: number, source: number): number {
  return -10 * Math.log10(1 - ((load - source) / (load + source)) ** 2);
}
