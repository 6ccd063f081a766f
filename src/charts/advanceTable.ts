/** Advance widths of a font from one code point on, thousandths of an em. */
interface Run {
  readonly first: number;
  readonly advances: readonly number[];
}

/** Of a letter from another font: an em is the widest that is usual. */
const unknownAdvance = 1000;

/** How far a text reaches, thousandths of an em, without kerning. */
export type Advance = (text: string) => number;

export function advanceTable(runs: readonly Run[]): Advance {
  const end = Math.max(...runs.map(({ first, advances }) => first + advances.length));
  const table = new Uint16Array(end).fill(unknownAdvance);
  for (const { first, advances } of runs) table.set(advances, first);
  return (text) => {
    let thousandths = 0;
    for (let at = 0; at < text.length; at += 1) {
      const point = text.codePointAt(at) ?? 0;
      if (point > 0xffff) at += 1;
      thousandths += table[point] ?? unknownAdvance;
    }
    return thousandths;
  };
}
