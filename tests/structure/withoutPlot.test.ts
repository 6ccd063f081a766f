import { readFileSync } from 'node:fs';
import { dirname, relative, resolve } from 'node:path';
import { expect, test } from 'vitest';

/** Packages that a file of `src` loads, itself or by what it imports; types load nothing. */
function packagesOf(start: string): ReadonlySet<string> {
  const found = new Set<string>();
  const seen = new Set<string>();
  const follow = (file: string): void => {
    if (seen.has(file) || !file.endsWith('.ts')) return;
    seen.add(file);
    const text = readFileSync(file, 'utf8');
    for (const [, from = ''] of text.matchAll(/^(?:import|export)\s(?!type\s)[^;]*?from '([^']+)';/gms)) {
      if (from.startsWith('.')) follow(resolve(dirname(file), from));
      else found.add(from);
    }
  };
  follow(resolve('src', start));
  expect(seen.size, relative(resolve('src'), start)).toBeGreaterThan(20);
  return found;
}

test.each(['charts/charts.ts', 'charts/narrativeCharts.ts', 'site/examineReport.ts'])(
  'whoever only asks what charts there are, as %s does, loads nothing that draws',
  (start) => {
    expect(packagesOf(start)).not.toContain('@observablehq/plot');
  },
);

test('what makes figures does', () => {
  expect(packagesOf('charts/makeFigures.ts')).toContain('@observablehq/plot');
});
