const PARITY = 0x1bd11bda;

/**
 * Threefry-2×32 with 20 rounds: two random words for each counter and key, without any state. A
 * draw is known by its number alone, so work can be shared out in any way and comes out the same.
 *
 * @param key0, key1 32 bits each
 * @param counter0, counter1 32 bits each
 * @param out receives two words of 32 bits, unsigned
 * @source Salmon, Moraes, Dror & Shaw, Parallel random numbers: as easy as 1, 2, 3, SC11, 2011
 */
export function threefry(
  key0: number,
  key1: number,
  counter0: number,
  counter1: number,
  out: Uint32Array,
): void {
  const key2 = PARITY ^ key0 ^ key1;
  let a = (counter0 + key0) | 0;
  let b = (counter1 + key1) | 0;
  for (let group = 1; group <= 5; group += 1) {
    if (group % 2 === 1) {
      a = (a + b) | 0;
      b = ((b << 13) | (b >>> 19)) ^ a;
      a = (a + b) | 0;
      b = ((b << 15) | (b >>> 17)) ^ a;
      a = (a + b) | 0;
      b = ((b << 26) | (b >>> 6)) ^ a;
      a = (a + b) | 0;
      b = ((b << 6) | (b >>> 26)) ^ a;
    } else {
      a = (a + b) | 0;
      b = ((b << 17) | (b >>> 15)) ^ a;
      a = (a + b) | 0;
      b = ((b << 29) | (b >>> 3)) ^ a;
      a = (a + b) | 0;
      b = ((b << 16) | (b >>> 16)) ^ a;
      a = (a + b) | 0;
      b = ((b << 24) | (b >>> 8)) ^ a;
    }
    const turn = group % 3;
    a = (a + (turn === 0 ? key0 : turn === 1 ? key1 : key2)) | 0;
    b = (b + (turn === 0 ? key1 : turn === 1 ? key2 : key0) + group) | 0;
  }
  out[0] = a;
  out[1] = b;
}
