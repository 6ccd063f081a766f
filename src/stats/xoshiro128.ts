/**
 * Generator xoshiro128** 1.1 (Blackman & Vigna 2021, "Scrambled linear pseudorandom number generators", ACM
 * TOMS 47): each call gives the next 32 bits. `state` is four words, not all 0. Not for secrets.
 */
export function xoshiro128(state: readonly [number, number, number, number]): () => number {
  let [a, b, c, d] = state;
  return () => {
    const result = Math.imul(rotated(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotated(d, 11);
    return result;
  };
}

function rotated(word: number, by: number): number {
  return (word << by) | (word >>> (32 - by));
}
