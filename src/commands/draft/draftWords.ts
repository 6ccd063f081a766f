import { relative, sep } from 'node:path';
import { understoodLines } from '../../intake/draft/understoodLines.ts';
import type { Understood } from '../../intake/draft/understood.ts';
import type { Problem } from '../../problems/problem.ts';
import { problemTable } from '../../problems/table.ts';
import { ifWarmUps } from '../../planning/planWords.ts';
import { visible } from '../../problems/visible.ts';
import type { Terminal } from '../terminal.ts';
import type { MaybePlanned } from './choosePlan.ts';

/** As other problems name files: from the content folder, where it lies in there. */
export function shownPath(path: string, contentDir: string): string {
  return path.startsWith(`${contentDir}${sep}`) ? relative(contentDir, path).replaceAll(sep, '/') : path;
}

/** A path as it can be typed again. */
export const quoted = (path: string): string =>
  /^[\w./-]+$/.test(path) ? path : `'${path.replaceAll("'", "'\\''")}'`;

export function understoodText(names: readonly string[], understood: Understood): string {
  const lines = understoodLines(understood);
  const widest = Math.max(...lines.map(({ label }) => label.length));
  return [
    names.map(visible).join(', '),
    ...lines.map(({ label, text }) => `  ${label.padEnd(widest)}  ${text}`),
    '',
  ].join('\n');
}

/** What keeps files from being placed, and how the fitter places them. */
export function unsureText(
  plans: readonly MaybePlanned[],
  paths: readonly string[],
  ownSlug: string,
): string {
  const typed = `npm run draft -- ${paths.map(quoted).join(' ')} --slug`;
  return [
    'This may be the session of a test that was planned, but that is not sure.',
    ...plans.flatMap(({ slug, why, warmUps }) => [
      `  ${slug}: ${visible(why)}${warmUps === null ? '' : ` (${ifWarmUps(warmUps)}, add --warm-ups ${warmUps})`}.`,
      `    If it is its session:      ${typed} ${slug}`,
    ]),
    `    If it is a test of its own: ${typed} ${ownSlug}`,
  ].join('\n');
}

/** The problems of the files at the places where the files lie: `placeOf` tells it by the name. */
export function printProblems(
  problems: readonly Problem[],
  placeOf: (name: string) => string,
  terminal: Terminal,
): void {
  const table = problemTable(
    problems.map((problem) => ({ ...problem, file: placeOf(problem.file) })),
    {
      colour: terminal.colour,
      width: terminal.width,
      howToSeeAll: 'npm run draft -- FILE.csv --dry-run --json prints them all.',
    },
  );
  if (table !== '') terminal.write(`${table}\n\n`);
}
