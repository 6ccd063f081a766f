import { readReport } from '../../../src/intake/authored/readReport.ts';
import type { Shared } from '../../../src/intake/authored/shared.ts';
import type { Problem } from '../../../src/problems/problem.ts';

export const file = 'reports/three-heads/report.md';

/** The smallest front matter that says all that is required, a key a line. */
export const smallest: Readonly<Record<string, string>> = {
  title: 'Three driver heads, one shaft',
  date: '2026-04-11',
  question: 'Does either new head carry farther than the used one?',
  varied: 'head',
  contenders:
    '{alder: {label: Alder 9°, supplied_by: our stock, sold_here: new}, birch: {label: Birch 9°, supplied_by: lent, sold_here: no}}',
  primary: 'carry',
  session: 'shots.csv',
  hitters: '{one: {role: staff fitter, consent: yes}}',
  interests: '{paid_by: the shop, commission_or_gifts: none, seen_before: nobody}',
  status: 'draft',
};

/** The smallest report with some keys changed, added at the end, or (null) left out. */
export function reportWith(changes: Readonly<Record<string, string | null>>): string {
  const answers = Object.entries({ ...smallest, ...changes }).filter(([, value]) => value !== null);
  return ['---', ...answers.map(([key, value]) => `${key}: ${value}`), '---', '', 'What we saw.', ''].join(
    '\n',
  );
}

export function readWith(
  changes: Readonly<Record<string, string | null>>,
  shared?: Shared,
): ReturnType<typeof readReport> {
  return readReport(file, reportWith(changes), shared);
}

/** A problem in one line, without its file: what the tests pin. */
export function line({ line: row, column, columnName, kind, expected, found, cure }: Problem): string {
  return `${row}:${column} ${columnName ?? '-'} | ${kind} | ${expected} | ${found ?? '-'} | ${cure}`;
}

export const problemsWith = (changes: Readonly<Record<string, string | null>>, shared?: Shared): string[] =>
  readWith(changes, shared).problems.map(line);
