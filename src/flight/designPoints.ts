const bases = [2, 3, 5, 7, 11];

/**
 * Points that fill the cube from -1 to 1 evenly but for a few more near its faces, where polynomials run wild:
 * Halton's sequence (Halton 1960, Numerische Mathematik 2) bent by a sine. At most five variables.
 */
export function designPoints(count: number, variables: number): readonly (readonly number[])[] {
  return Array.from({ length: count }, (_, i) =>
    bases.slice(0, variables).map((base) => Math.sin((radicalInverse(i + 1, base) - 0.5) * Math.PI)),
  );
}

/** Digits of `index` in `base` mirrored at the point: 0 to 1. */
function radicalInverse(index: number, base: number): number {
  let rest = index;
  let weight = 1 / base;
  let sum = 0;
  while (rest > 0) {
    sum += weight * (rest % base);
    rest = Math.floor(rest / base);
    weight /= base;
  }
  return sum;
}
