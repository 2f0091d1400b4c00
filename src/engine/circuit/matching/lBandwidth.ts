/**
 * Width over which an L network matches to within so much loss, Hz: by the loaded Q of half the
 * network's Q, B = 2f/Q·√(A − 1) with A the loss as a ratio of powers. First order: right to some
 * per cent from Q 3 up, and only a hint below, where the network is wide anyway.
 *
 * @param frequency Hz
 * @param q of the network
 * @param loss dB at the edges
 */
export const lBandwidth = (frequency: number, q: number, loss: number): number =>
  ((2 * frequency) / q) * Math.sqrt(10 ** (loss / 10) - 1);
