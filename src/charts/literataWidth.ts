import advances from './literataAdvances.json' with { type: 'json' };

/** Of a letter from another font: an em is the widest that is usual. */
const unknownAdvance = 1000;

const table: ReadonlyMap<number, number> = new Map(
  advances.runs.flatMap(({ first, semibold }) =>
    semibold.map((advance, index) => [first + index, advance] as const),
  ),
);

/** Width in px of a line set in Literata at weight 600, without kerning. */
export function literataWidth(text: string, size: number): number {
  let thousandths = 0;
  for (const character of text) thousandths += table.get(character.codePointAt(0) ?? 0) ?? unknownAdvance;
  return (thousandths * size) / 1000;
}
