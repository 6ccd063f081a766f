import stringWidth from 'string-width';
import wrapAnsi from 'wrap-ansi';

/** Columns of a terminal that a text takes: a wide letter or an emoji two, a letter with its marks one. */
export const columnsOf = (text: string): number => stringWidth(text);

/** The text with blanks behind it until it takes so many columns; a longer one as it is. */
export function padded(text: string, columns: number): string {
  return text + ' '.repeat(Math.max(0, columns - columnsOf(text)));
}

/**
 * Lines of at most so many columns, broken at blanks; a longer word is broken where the line ends. Text comes out
 * composed (NFC).
 */
export function wrapped(text: string, columns: number): readonly string[] {
  return wrapAnsi(text, columns, { hard: true }).split('\n');
}
