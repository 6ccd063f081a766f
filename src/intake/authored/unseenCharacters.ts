import { makeProblem } from '../../problems/makeProblem.ts';
import type { Place, Problem } from '../../problems/problem.ts';

/**
 * Control characters but tab and line ends, those that turn the direction of text round, and what is no character at
 * all. XML 1.0 (section 2.2) allows none of the first and last kind, so charts and feeds would break; the others can
 * make a line read as something else than it is (Unicode TR 36, section 3.2).
 */
const unseen =
  /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F\u202A-\u202E\u2066-\u2069\uFFFE\uFFFF\p{Surrogate}]/u;

export function unseenIn(text: string): { readonly at: number; readonly name: string } | null {
  const found = unseen.exec(text);
  if (found === null) return null;
  const code = found[0].codePointAt(0) ?? 0;
  return { at: found.index, name: `U+${code.toString(16).toUpperCase().padStart(4, '0')}` };
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
