import { makeProblem } from '../../problems/makeProblem.ts';
import type { Place, Problem } from '../../problems/problem.ts';

/**
 * Control characters but tab and line ends, and what is no character at all. XML 1.0 (section 2.2) allows neither, so
 * charts and feeds would break. Marks of direction are text of many languages and stay as typed.
 */
const unseen = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F\uFFFE\uFFFF\p{Surrogate}]/u;

export function unseenIn(text: string): { readonly at: number; readonly name: string } | null {
  const found = unseen.exec(text);
  if (found === null) return null;
  const code = found[0].codePointAt(0) ?? 0;
  return { at: found.index, name: `U+${code.toString(16).toUpperCase().padStart(4, '0')}` };
}

/** The text without such characters: session files may hold them, what a shop writes may not. */
export function withoutUnseen(text: string): string {
  return text.replace(new RegExp(unseen, 'gu'), '');
}

/** The problem of such a character. */
export function unseenProblem(place: Pick<Place, 'file' | 'line' | 'column'>, name: string): Problem {
  return makeProblem('control-character', place, {
    expected: 'text of characters that can be seen',
    found: name,
    cure: 'Type the line anew; such characters come along when text is copied from elsewhere.',
  });
}

/** The first such character of each line of a text that begins on that line of the file. */
export function unseenProblems(file: string, text: string, firstLine: number): readonly Problem[] {
  return text.split(/\r\n|\n|\r/).flatMap((line, index) => {
    const found = unseenIn(line);
    return found === null
      ? []
      : [unseenProblem({ file, line: firstLine + index, column: found.at + 1 }, found.name)];
  });
}
