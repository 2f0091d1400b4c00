/**
 * Moves an envelope's spectrum up by so many hertz, in place.
 *
 * @param by Hz; below 0 downwards, @param rate samples a second
 */
export function shift(re: Float64Array, im: Float64Array, by: number, rate: number): void {
  if (by === 0) return;
  const turn = (2 * Math.PI * by) / rate;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  let [x, y] = [1, 0];
  for (let i = 0; i < re.length; i += 1) {
    // Set right now and then: rounding would let the turning vector grow.
    if ((i & 1023) === 0) [x, y] = [Math.cos(turn * i), Math.sin(turn * i)];
    const a = re[i] as number;
    const b = im[i] as number;
    re[i] = a * x - b * y;
    im[i] = a * y + b * x;
    const kept = x;
    x = x * c - y * s;
    y = y * c + kept * s;
  }
}
