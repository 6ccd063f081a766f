import stringWidth from 'string-width';
import wrapAnsi from 'wrap-ansi';

/**
 * The text with blanks behind it until it takes so many columns of a terminal; a longer one as it is. A wide letter or an
 * emoji takes two, a letter with its marks one.
 */
export function padded(text: string, columns: number): string {
  return text + ' '.repeat(Math.max(0, columns - stringWidth(text)));
}

/**
 * Lines of at most so many columns, broken at blanks; a longer word is broken where the line ends. Text comes out
 * composed (NFC).
 */
export function wrapped(text: string, columns: number): readonly string[] {
  return wrapAnsi(text, columns, { hard: true }).split('\n');
}
