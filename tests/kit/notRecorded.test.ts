import { expect, test } from 'vitest';
import { notRecordedInShort } from '../../src/kit/notRecorded.ts';
import { disclosure } from '../../src/prose/disclosure.ts';
import { uncapitalised } from '../../src/prose/words.ts';
import { reportOf } from '../findings/reportOf.ts';
import { reports } from './content.ts';

const report = reportOf({});
const items = disclosure({ ...report, version: '0' }).flatMap((group) => group.items);
const missing = items.filter(({ value }) => value === null);
const labels = missing.map(({ label }) => uncapitalised(label));
const told = (longest: number): string => notRecordedInShort(report, '0', longest);

test('what is missing is counted, and named group by group while there is room', () => {
  expect(missing.length).toBeGreaterThan(10);
  expect(told(100_000)).toMatch(
    new RegExp(`^Not recorded, ${missing.length} of ${items.length}\\. \\w.*[^e]\\.$`),
  );
  expect(told(100_000)).not.toMatch(/ more\.$/);
  const names = told(100_000)
    .replace(/^Not recorded, \d+ of \d+\. /, '')
    .split(/[;,] /);
  expect(names.length).toBeGreaterThanOrEqual(missing.length);
});

test('what has no room is counted, never dropped', () => {
  for (const longest of [40, 90, 200]) {
    const [, whole = '', rest = '0'] =
      /^Not recorded, \d+ of \d+\. (.*?)(?:; and (\d+) more)?\.$/.exec(told(longest)) ?? [];
    expect(whole.length).toBeLessThanOrEqual(longest);
    expect(whole.length).toBeGreaterThan(0);
    expect(Number(rest)).toBeGreaterThan(0);
    expect(Number(rest)).toBeLessThan(missing.length);
    // The first so many, in the order of the list.
    expect(told(100_000)).toContain(whole);
    expect(whole.endsWith(labels[missing.length - Number(rest) - 1] ?? '?'), whole).toBe(true);
  }
});

test('a group is named once, before what it lacks', () => {
  const [full] = reports;
  if (full === undefined) throw new Error('no report');
  const words = notRecordedInShort(full, '0', 400);
  const groups = [...words.matchAll(/(?:^|[.;] )([A-Z][^:;.]*):/g)].map(([, name]) => name);
  expect(new Set(groups).size).toBe(groups.length);
});
