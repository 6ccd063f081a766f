import { expect, test } from 'vitest';
import { citation } from '../../src/prose/english/kit/citation.ts';
import { asItWasBefore, olderVersionWords, presentVersion } from '../../src/prose/english/kit/versions.ts';
import { movedWords } from '../../src/prose/english/kit/moved.ts';
import { reportOf } from '../findings/reportOf.ts';

const { source } = reportOf({});
const cited = (
  front: Partial<typeof source.front>,
  more: { readonly locale?: string; readonly version?: string; readonly address?: string | null } = {},
): string =>
  citation(
    { front: { ...source.front, title: 'Three balls, one iron', ...front }, locale: more.locale ?? 'en-GB' },
    { publisher: 'Example Golf Workshop', version: more.version ?? '1.0', address: more.address ?? null },
  );

const days = { date: '2026-04-18', published: '2026-05-02', inventedData: false, corrections: [] } as const;

test('a report is cited by shop, title, days and version', () => {
  expect(cited(days)).toBe(
    'Example Golf Workshop: Three balls, one iron. Hit 18 April 2026, published 2 May 2026. Version 1.0.',
  );
});

test('with its address, where the site has one, and in the spelling of the shop', () => {
  expect(cited(days, { locale: 'en-US', address: 'https://golf.example/reports/three-balls/' })).toBe(
    'Example Golf Workshop: Three balls, one iron. Hit April 18, 2026, published May 2, 2026. Version 1.0. ' +
      'https://golf.example/reports/three-balls/',
  );
});

test('a title that ends as a sentence gets no full stop, and invented data are named', () => {
  expect(cited({ ...days, title: 'Which ball?', published: null, inventedData: true })).toBe(
    'Example Golf Workshop: Which ball? Hit 18 April 2026. Invented data. Version 1.0.',
  );
});

test('of several corrections the latest is told', () => {
  const corrections = ['2026-05-03', '2026-06-01', '2026-05-20'].map((date) => ({
    date,
    what: 'the title',
    was: 'x',
    now: 'y',
  }));
  expect(cited({ ...days, corrections }, { version: '1.0.3' })).toContain(
    ' Version 1.0.3, corrected 1 June 2026.',
  );
});

test('a version that was kept, and an address that was left, say what they are', () => {
  expect(olderVersionWords('2026-05-03', 'en-GB')).toBe(
    'This is the report as it was before the correction of 3 May 2026.',
  );
  expect([presentVersion, asItWasBefore, movedWords]).toEqual([
    'The report as it stands',
    'The report as it was before',
    'This report has another address now:',
  ]);
});
