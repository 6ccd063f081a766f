import type { Report } from './collector.ts';

/** Outer spaces go and inner runs of spaces, no-break ones included, become one; tabs and line ends stay. */
export function spacesJoined(text: string): string {
  return text.replace(/[ \u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]+/g, ' ').trim();
}

/** Text that a spreadsheet would run when the file is opened in one. */
function looksLikeFormula(text: string): boolean {
  return (
    /^[=@]\S/.test(text) ||
    (/^[+\-]\S/.test(text) && /^[+\-][\p{L}(]|^[+\-][\d.,]+\s*[-+*/^]\s*\S/u.test(text))
  );
}

/** Text that a browser would take for markup. */
function looksLikeMarkup(text: string): boolean {
  return /<\/?[a-z!?][^<]*/i.test(text) || /&(?:#\d+|#x[\da-f]+|[a-z]{2,31});/i.test(text);
}

export interface PlacedText {
  readonly text: string;
  readonly line: number;
  readonly column: number | null;
  readonly columnName: string | null;
}

/** Says once per file where text looks like a formula or like markup; the text itself stays as typed. */
export function reportOddText(texts: Iterable<PlacedText>, report: Report): void {
  let formula = 0;
  let markup = 0;
  let firstFormula: PlacedText | null = null;
  let firstMarkup: PlacedText | null = null;
  for (const placed of texts) {
    if (looksLikeFormula(placed.text)) {
      formula += 1;
      firstFormula ??= placed;
    }
    if (looksLikeMarkup(placed.text)) {
      markup += 1;
      firstMarkup ??= placed;
    }
  }
  const place = ({ line, column, columnName }: PlacedText) => ({ line, column, columnName });
  if (firstFormula !== null) {
    report('formula-like-text', {
      ...place(firstFormula),
      expected: 'names and notes that no spreadsheet would run as a formula',
      found: firstFormula.text,
      cure: `nothing need be done: it is kept as plain text (${formula} ${formula === 1 ? 'cell' : 'cells'})`,
    });
  }
  if (firstMarkup !== null) {
    report('markup-in-text', {
      ...place(firstMarkup),
      expected: 'names and notes in plain words',
      found: firstMarkup.text,
      cure: `nothing need be done: it is printed as it stands, not obeyed (${markup} ${markup === 1 ? 'cell' : 'cells'})`,
    });
  }
}
