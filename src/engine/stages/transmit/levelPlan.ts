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
 * Loss between a resistive source and a load that don't match, dB: the load takes
 * 4·GS·GL/((GS + GL)² + BL²) of what the source could give.
 *
 * @param load resistance Ω and capacitance F in parallel
 * @param source Ω
 * @param frequency Hz
 */
export function mismatchLoss(
  load: { readonly r: number; readonly c: number },
  source: number,
  frequency: number,
): number {
  const total = 1 / source + 1 / load.r;
  const b = 2 * Math.PI * frequency * load.c;
  return -10 * Math.log10(4 / (source * load.r) / (total * total + b * b));
}
