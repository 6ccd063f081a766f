import { styleText } from 'node:util';
import { countInWords, countProblems } from './countProblems.ts';
import { problemKinds } from './kinds.ts';
import { padded, wrapped } from './printedText.ts';
import type { Problem } from './problem.ts';
import { gravestFirst } from './sortProblems.ts';
import { visible } from './visible.ts';

interface TableOptions {
  readonly colour: boolean;
  /** Columns in a line; file names are never broken. */
  readonly width?: number;
  /** How many problems are printed before the rest is counted; null prints all. */
  readonly most?: number | null;
  /** The sentence that tells how to see the rest. */
  readonly howToSeeAll?: string;
}

const defaultWidth = 100;
const narrowest = 40;
const defaultMost = 20;
const longestFound = 240;
const labelWidth = 10;

/**
 * The table of problems, errors first, then by file, line and column, one block each:
 *
 *     reports/three-heads/report.md:4:7  date
 *       error     The value cannot be used (value-invalid)
 *       expected  a date as year-month-day, such as 2026-04-11
 *       found     2026-02-30
 *       to do     Write the date as year-month-day with two digits for month and day; the day must exist.
 *
 * Empty when there is no problem; no line break at the end.
 */
export function problemTable(problems: readonly Problem[], options: TableOptions): string {
  if (problems.length === 0) return '';
  const most = options.most === undefined ? defaultMost : (options.most ?? problems.length);
  const sorted = gravestFirst(problems);
  const rest = sorted.slice(most);
  const width = Math.max(options.width ?? defaultWidth, narrowest);
  const blocks = sorted.slice(0, most).map((problem) => block(problem, width, options.colour));
  const more = `and ${countInWords(countProblems(rest))} more. ${options.howToSeeAll ?? ''}`.trim();
  return [
    `${countInWords(countProblems(problems))}, ${problems.length === 1 ? 'at' : 'each at'} file:line:column`,
    ...blocks,
    ...(rest.length === 0 ? [] : [more]),
  ].join('\n\n');
}

function block(problem: Problem, width: number, colour: boolean): string {
  const { kind, severity, file, line, column, columnName, expected, found, cure } = problem;
  const paint = (style: Parameters<typeof styleText>[0], text: string): string =>
    // Whether to colour is the caller's decision, not that of the stream.
    colour ? styleText(style, text, { validateStream: false }) : text;
  const row = (label: string, text: string, style: Parameters<typeof styleText>[0] = 'dim'): string =>
    wrapped(visible(text), width - labelWidth - 2)
      .map((words, index) => `  ${paint(style, padded(index === 0 ? label : '', labelWidth))}${words}`)
      .join('\n');
  const place = [file, ...(line === null ? [] : [line, ...(column === null ? [] : [column])])].join(':');
  const name = columnName === null ? '' : `  ${shortened(columnName)}`;
  return [
    paint('bold', visible(place)) + visible(name),
    row(severity, `${problemKinds[kind].title} (${kind})`, severity === 'error' ? 'red' : 'yellow'),
    row('expected', expected),
    row('found', found === null ? 'nothing' : found === '' ? '(blank)' : shortened(found)),
    row('to do', cure),
  ].join('\n');
}

function shortened(text: string): string {
  const characters = [...text.slice(0, longestFound * 2)];
  const whole = characters.length <= longestFound && text.length <= longestFound * 2;
  return whole ? text : `${characters.slice(0, longestFound).join('')}... (${text.length} characters)`;
}
