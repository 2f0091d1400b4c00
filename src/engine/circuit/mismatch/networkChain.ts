import type { OutputLadder } from '../outputLadder.ts';

/** Numbers of one chain matrix: real and imaginary parts of A, B, C, D. */
export const CHAIN_SIZE = 8;

/**
 * Chain matrix of a network between collector and antenna at one frequency, its transformer
 * included; the source's own resistance and the load are left out.
 *
 * V₁ = A·V₂ + B·I₂ and I₁ = C·V₂ + D·I₂, with I₂ flowing out into the load. Made plain numbers by the
 * ladder's own load resistance R: written are A, B/R, C·R, D.
 *
 * @param ladder branches from source to load
 * @param frequency Hz, above zero
 * @param out receives eight numbers from `at` on
 * Source: chain matrices, any text on two-ports.
 */
export function networkChain(
  { branches, ratio, load, reference }: OutputLadder,
  frequency: number,
  out: Float64Array,
  at = 0,
): void {
  const w = 2 * Math.PI * frequency;
  const w0 = 2 * Math.PI * reference;
  const skin = Math.sqrt(frequency / reference);
  // Columns: one volt without current at the load, and one unit of current without voltage.
  let [ar, ai, br, bi] = [1, 0, 0, 0];
  let [cr, ci, dr, di] = [0, 0, 1, 0];
  for (let k = branches.length - 1; k >= 0; k -= 1) {
    const branch = branches[k];
    if (branch === undefined) continue;
    const { place, l, c, ql, qc } = branch;
    let g = ((w * c) / qc) * load;
    let b = w * c * load;
    if (l > 0) {
      const r = (w0 * l * skin) / ql / load;
      const x = (w * l) / load;
      const size = r * r + x * x;
      g += r / size;
      b -= x / size;
    }
    if (place === 'shunt') {
      cr += ar * g - ai * b;
      ci += ar * b + ai * g;
      dr += br * g - bi * b;
      di += br * b + bi * g;
    } else {
      const size = g * g + b * b;
      ar += (cr * g + ci * b) / size;
      ai += (ci * g - cr * b) / size;
      br += (dr * g + di * b) / size;
      bi += (di * g - dr * b) / size;
    }
  }
  out[at] = ar / ratio;
  out[at + 1] = ai / ratio;
  out[at + 2] = br / ratio;
  out[at + 3] = bi / ratio;
  out[at + 4] = cr * ratio;
  out[at + 5] = ci * ratio;
  out[at + 6] = dr * ratio;
  out[at + 7] = di * ratio;
}
