import { mkdirSync, writeFileSync } from 'node:fs';

/** Writes an invented session file of a demo report: a heading row, then one row a shot. */
export function writeSession(
  slug: string,
  heading: readonly string[],
  rows: readonly (readonly string[])[],
  file = 'shots.csv',
): void {
  const folder = `content/reports/${slug}`;
  mkdirSync(folder, { recursive: true });
  writeFileSync(`${folder}/${file}`, `${[heading, ...rows].map((row) => row.join(',')).join('\n')}\n`);
}
