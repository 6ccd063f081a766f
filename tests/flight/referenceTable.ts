import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Rows of a table in tests/reference/flight, values as text. */
export function referenceTable(name: string): readonly Readonly<Record<string, string>>[] {
  const [head = '', ...lines] = readFileSync(join('tests/reference/flight', name), 'utf8').trim().split('\n');
  const names = head.split(',');
  return lines.map((line) => {
    const cells = line.split(',').map((cell) => cell.trim());
    return Object.fromEntries(names.map((heading, i) => [heading.trim(), cells[i] ?? '']));
  });
}
