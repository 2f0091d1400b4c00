/** Sines and cosines of a whole turn, by the number of points: worked out once for each size. */
const turns = new Map<number, Float64Array>();

function turnOf(n: number): Float64Array {
  const kept = turns.get(n);
  if (kept) return kept;
  const turn = new Float64Array(n);
  for (let k = 0; k < n / 2; k += 1) {
    const angle = (2 * Math.PI * k) / n;
    turn[2 * k] = Math.cos(angle);
    turn[2 * k + 1] = Math.sin(angle);
  }
  turns.set(n, turn);
  return turn;
}

/**
 * Discrete Fourier transform in place, X[k] = Σ x[n]·e^(∓j2πkn/N), not scaled.
 *
 * @param re, im real and imaginary parts, as many as a power of two
 * @param inverse with e^(+j…): time out of frequency
 * @source J. W. Cooley & J. W. Tukey, Math. Comp. 19, 1965, radix 2
 */
export function fft(re: Float64Array, im: Float64Array, inverse = false): void {
  const n = re.length;
  const turn = turnOf(n);
  const sign = inverse ? 1 : -1;
  // Into the order of the bits turned round.
  for (let i = 1, j = 0; i < n; i += 1) {
    let bit = n >> 1;
    for (; j & bit; bit >>= 1) j ^= bit;
    j ^= bit;
    if (i < j) {
      swap(re, i, j);
      swap(im, i, j);
    }
  }
  for (let size = 2; size <= n; size *= 2) {
    const half = size / 2;
    const step = (2 * n) / size;
    for (let from = 0; from < n; from += size) {
      for (let k = 0, at = 0; k < half; k += 1, at += step) {
        const c = turn[at] as number;
        const s = sign * (turn[at + 1] as number);
        const a = from + k;
        const b = a + half;
        const br = re[b] as number;
        const bi = im[b] as number;
        const tr = br * c - bi * s;
        const ti = br * s + bi * c;
        const ar = re[a] as number;
        const ai = im[a] as number;
        re[b] = ar - tr;
        im[b] = ai - ti;
        re[a] = ar + tr;
        im[a] = ai + ti;
      }
    }
  }
}

function swap(of: Float64Array, i: number, j: number): void {
  const kept = of[i] as number;
  of[i] = of[j] as number;
  of[j] = kept;
}
