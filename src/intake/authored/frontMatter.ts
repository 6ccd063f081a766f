import { at } from '../../stats/at.ts';
import { makeProblem } from '../../problems/makeProblem.ts';
import type { Problem } from '../../problems/problem.ts';

/** The narrative under the front matter, and the line of the file on which it begins (from 1). */
export interface Body {
  readonly text: string;
  readonly firstLine: number;
}

interface SplitReport {
  /** From the opening line of dashes to the last answer, so that lines count as they do in the file; null without front matter. */
  readonly yaml: string | null;
  readonly body: Body;
  readonly problems: readonly Problem[];
}

const dashes = /^---[ \t]*$/;

/** Parts the front matter of `report.md` from its narrative. */
export function splitReport(file: string, text: string): SplitReport {
  const whole = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const lines = whole.split(/\r\n|\n|\r/);
  const missing = (line: number, expected: string, found: string | null, cure: string): SplitReport => ({
    yaml: null,
    body: { text: whole, firstLine: 1 },
    problems: [makeProblem('front-matter-missing', { file, line, column: 1 }, { expected, found, cure })],
  });
  if (!dashes.test(at(lines, 0))) {
    return missing(
      1,
      'a first line of three dashes (---), then the answers, then three dashes again',
      lines[0]?.trim() ? lines[0] : 'an empty line',
      'Write --- as the very first line of the file, and --- again on a line of its own after the last answer.',
    );
  }
  const end = lines.findIndex((line, index) => index > 0 && dashes.test(line));
  if (end === -1) {
    return missing(
      1,
      'three dashes (---) on a line of their own after the last answer',
      'no closing line of dashes',
      'Write --- on a line of its own between the last answer and the narrative.',
    );
  }
  return {
    yaml: lines.slice(0, end).join('\n') + '\n',
    body: { text: lines.slice(end + 1).join('\n'), firstLine: end + 2 },
    problems: [],
  };
}
