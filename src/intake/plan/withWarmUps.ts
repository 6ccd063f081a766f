import { readOrderSheet, type OrderSheet } from './readOrderSheet.ts';

/** An order sheet as it is to be saved, and as it then reads. */
interface LongerSheet {
  readonly text: string;
  readonly sheet: OrderSheet;
}

const encoded = (text: string): Uint8Array => new TextEncoder().encode(text);

/**
 * The order sheet with so many warm-up swings before its first shot, whose numbers move up by as many: for a monitor that
 * counted them. Null where the sheet has been changed so much that only a person can do it.
 */
export function withWarmUps(file: string, text: string, swings: number): LongerSheet | null {
  const lines = text.split(/\r\n|\n/);
  const at = lines.findIndex((line) => /^\W*shot\b/i.test(line) && /\bcontender\b/i.test(line));
  const head = lines[at];
  const delimiter = /^\W*shot"?\s*([,;\t])/i.exec(head ?? '')?.[1];
  if (head === undefined || delimiter === undefined) return null;
  const contender = head
    .split(delimiter)
    .findIndex((cell) => cell.replaceAll('"', '').trim().toLowerCase() === 'contender');
  const warmUps = Array.from({ length: swings }, (_, index) =>
    head
      .split(delimiter)
      .map((_cell, column) => (column === 0 ? String(index + 1) : column === contender ? 'warm-up' : ''))
      .join(delimiter),
  );
  const shots = lines
    .slice(at + 1)
    .map((line) =>
      line.replace(
        /^("?)(\d+)(?="?\s*[,;\t])/,
        (_, quote: string, number: string) => `${quote}${Number(number) + swings}`,
      ),
    );
  const longer = [...lines.slice(0, at + 1), ...warmUps, ...shots].join(
    text.includes('\r\n') ? '\r\n' : '\n',
  );
  const before = readOrderSheet(file, encoded(text));
  const sheet = readOrderSheet(file, encoded(longer));
  const moved = sheet.entries.slice(swings);
  const right =
    [...before.problems, ...sheet.problems].every(({ severity }) => severity !== 'error') &&
    sheet.entries
      .slice(0, swings)
      .every(({ shot, contender: hit }, index) => shot === index + 1 && hit === null) &&
    moved.length === before.entries.length &&
    moved.every((entry, index) => {
      const own = before.entries[index];
      return (
        entry.shot === (own?.shot ?? NaN) + swings &&
        entry.contender === own?.contender &&
        entry.note === own.note
      );
    });
  return right ? { text: longer, sheet } : null;
}
