import { expect, test } from 'vitest';
import { textWidth } from '../../src/charts/textWidth.ts';
import { figuresToOffer, kitOf } from '../../src/kit/kitOf.ts';
import { noticePicture } from '../../src/kit/noticePicture.ts';
import type { Report } from '../../src/kit/report.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { reports } from './content.ts';
import { manyReports } from './manyReports.ts';

const gone = loadSite(manyReports('name: Shop & Sons\naddress: https://golf.example/tests/\n')).reports.find(
  ({ source }) => source.front.status === 'withdrawn',
);
if (gone === undefined) throw new Error('no withdrawn report');

const wordsOf = (svg: string): string =>
  svg.replaceAll(/<title.*?<\/title>|<[^>]*>/g, ' ').replaceAll(/\s+/g, ' ');

test('only a withdrawn report leaves one', () => {
  for (const report of reports) expect(noticePicture(report)).toBeNull();
});

test('it says when, what, why and where to look', () => {
  const words = wordsOf(noticePicture(gone) ?? '');
  for (const part of [
    'Withdrawn on 25 June 2026.',
    'Two heads: gone',
    'The chart that stood here no longer holds. The monitor was out of order.',
    'Shop &amp; Sons: see golf.example/tests/reports/gone',
  ])
    expect(words).toContain(part);
});

test('without an address it sends nobody anywhere', () => {
  const { shop } = gone.source;
  if (shop === null) throw new Error('no shop');
  const bare: Report = { ...gone, source: { ...gone.source, shop: { ...shop, address: null } } };
  expect(wordsOf(noticePicture(bare) ?? '')).not.toMatch(/see|golf\.example/);
});

test('a long title and a long reason stay inside, line under line', () => {
  const title = 'Heads with names that are as long as names of heads may ever be, hit in one morning '.repeat(
    2,
  );
  const reason = 'the monitor was set to another ball than the one that was hit, as we found '.repeat(4);
  const front = { ...gone.source.front, title, withdrawn: { date: '2026-06-25', reason } };
  const svg = noticePicture({ ...gone, source: { ...gone.source, front } }) ?? '';
  const [, height = '0'] = /\sheight="(\d+)"/.exec(svg) ?? [];
  const lines = [...svg.matchAll(/<text x="24" y="(\d+)">([^<]*)<\/text>/g)];
  expect(lines.length).toBeGreaterThan(7);
  let above = 0;
  for (const [, y = '0', words = ''] of lines) {
    expect(Number(y)).toBeGreaterThan(above);
    above = Number(y);
    expect(textWidth(words, 19, 400)).toBeLessThan(720);
  }
  expect(above).toBeLessThan(Number(height) - 10);
});

test('what it offered before is known still, and is offered no more', () => {
  expect(figuresToOffer(gone).map(({ id }) => id)).toContain('apart');
  expect(kitOf(gone).offered).toEqual([]);
});
