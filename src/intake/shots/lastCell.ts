import { isMissingMark } from './cell.ts';

/** What can be told of a last cell beside those above it. */
type LastCell = 'whole' | 'perhaps-cut' | 'cut';

/** How a number is written: digits before its last mark, digits behind it, whether the mark ends it, its size. */
interface Written {
  readonly whole: number;
  readonly decimals: number;
  readonly endsInMark: boolean;
  readonly size: number;
}

function writtenAs(cell: string): Written | null {
  const numeral = /\d[\d.,]*/.exec(cell)?.[0];
  if (numeral === undefined) return null;
  const at = Math.max(numeral.lastIndexOf('.'), numeral.lastIndexOf(','));
  const [before, behind] = at < 0 ? [numeral, ''] : [numeral.slice(0, at), numeral.slice(at + 1)];
  const whole = before.replace(/\D/g, '');
  return {
    whole: whole.length,
    decimals: behind.length,
    endsInMark: at >= 0 && behind === '',
    size: Number(`${whole}.${behind}`),
  };
}

const least = (numbers: readonly number[]): number => numbers.reduce((a, b) => Math.min(a, b));

/** Fewer cells above tell no habit. */
export const fewestAbove = 3;

/**
 * Judges the number in the last cell of a file without a line end by how all numbers above it are written. An export
 * that is whole writes it as it wrote them, but for a rare reading of fewer digits or a zero left out at its end.
 */
export function judgeNumber(last: string, above: readonly string[]): LastCell {
  const filled = above.filter((cell) => !isMissingMark(cell));
  if (filled.length < fewestAbove) return 'whole';
  if (isMissingMark(last)) return filled.length === above.length ? 'perhaps-cut' : 'whole';
  const cell = writtenAs(last);
  const others = filled.map(writtenAs).filter((each) => each !== null);
  if (cell === null || others.length < filled.length) return 'whole';
  const fewerDecimals = cell.decimals < least(others.map(({ decimals }) => decimals));
  const fewerDigits = cell.whole < least(others.map(({ whole }) => whole));
  const neverWhole = least(others.map(({ decimals }) => decimals)) > 0;
  if (
    fewerDigits &&
    (fewerDecimals || (!neverWhole && 2 * cell.size < least(others.map(({ size }) => size))))
  )
    return 'cut';
  const oddMark = cell.endsInMark && !others.some(({ endsInMark }) => endsInMark);
  return fewerDecimals || oddMark || (fewerDigits && !neverWhole) ? 'perhaps-cut' : 'whole';
}

/** Judges a name, a time or a count in the last cell: part of one above, or shorter than all of them. */
export function judgeText(last: string, above: readonly string[]): LastCell {
  const filled = above.filter((cell) => !isMissingMark(cell));
  if (filled.length < fewestAbove || filled.includes(last)) return 'whole';
  if (isMissingMark(last)) return filled.length === above.length ? 'perhaps-cut' : 'whole';
  const shorter = /\d$/.test(last) && last.length < least(filled.map(({ length }) => length));
  return shorter || filled.some((cell) => cell.startsWith(last)) ? 'perhaps-cut' : 'whole';
}
