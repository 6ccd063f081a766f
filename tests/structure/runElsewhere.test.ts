import { existsSync, globSync } from 'node:fs';
import { expect, test } from 'vitest';
import { notEveryday } from '../everyday.ts';
import { runElsewhere } from '../runElsewhere.ts';

test.each(runElsewhere)('%s still names code', (pattern) => {
  expect(globSync(pattern).filter((file) => file.endsWith('.ts'))).not.toEqual([]);
});

test.each(notEveryday)('%s, which is not for every day, is a test', (file) => {
  expect(existsSync(file)).toBe(true);
});

test('most code is run through by tests themselves', () => {
  const files = globSync('src/**/*.ts');
  const elsewhere = new Set(runElsewhere.flatMap((pattern) => globSync(pattern)));
  expect(files.filter((file) => elsewhere.has(file)).length / files.length).toBeLessThan(0.15);
});
