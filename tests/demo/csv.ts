import { mkdirSync, writeFileSync } from 'node:fs';

/** Writes the invented session of a demo report: a heading row, then one row a shot. */
export function writeSession(
  slug: string,
  heading: readonly string[],
  rows: readonly (readonly string[])[],
): void {
  const folder = `content/reports/${slug}`;
  mkdirSync(folder, { recursive: true });
  writeFileSync(`${folder}/shots.csv`, `${[heading, ...rows].map((row) => row.join(',')).join('\n')}\n`);
}
