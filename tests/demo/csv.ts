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

/** Side in yards of a start direction in degrees over a carry, plus what curve adds. */
export function sideOf(carry: number, direction: number, curve: number): number {
  return carry * Math.tan((direction * Math.PI) / 180) + curve;
}
