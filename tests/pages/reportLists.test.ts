import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { listPages, listPath } from '../../src/site/reportLists.ts';
import { reportKinds } from '../../src/site/reportKinds.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import type { Report } from '../../src/kit/report.ts';

const { reports } = loadSite(resolve('content'));
const [first] = reports;
const some = (count: number): readonly Report[] =>
  Array.from({ length: count }, () => {
    if (first === undefined) throw new Error('no report');
    return { ...first };
  });

describe('pages of a list', () => {
  test('are one up to 59 reports and hold 50 each from 60 on, none lost and none twice', () => {
    expect(listPages(some(59)).map((page) => page.reports.length)).toEqual([59]);
    expect(listPages(some(60)).map((page) => page.reports.length)).toEqual([50, 10]);
    const all = some(300);
    const pages = listPages(all);
    expect(pages).toHaveLength(6);
    expect(pages.flatMap((page) => page.reports)).toEqual(all);
    expect(pages.map(({ number, pages: of }) => [number, of])).toEqual(
      [1, 2, 3, 4, 5, 6].map((number) => [number, 6]),
    );
  });

  test('of no report are one page', () => {
    expect(listPages([]).map(({ path, reports: own }) => [path, own.length])).toEqual([['/', 0]]);
  });

  test('have addresses that say what they are', () => {
    expect(listPages(some(120)).map(({ path }) => path)).toEqual(['/', '/page/2/', '/page/3/']);
    expect(listPath({ id: 'fairway-woods' }, 1)).toBe('/kinds/fairway-woods/');
    expect(listPath({ id: 'fairway-woods' }, 2)).toBe('/kinds/fairway-woods/page/2/');
  });
});

describe('kinds', () => {
  const kinds = reportKinds(reports);
  const slugs = (id: string): readonly string[] =>
    kinds.find((kind) => kind.id === id)?.reports.map(({ source }) => source.slug) ?? [];

  test('are clubs in the order of a bag, then what was compared', () => {
    expect(kinds.map(({ id, title }) => [id, title])).toEqual([
      ['drivers', 'Drivers'],
      ['fairway-woods', 'Fairway woods'],
      ['hybrids', 'Hybrids'],
      ['irons', 'Irons'],
      ['wedges', 'Wedges'],
      ['balls', 'Balls'],
      ['clubs', 'Clubs'],
      ['grooves', 'Grooves'],
      ['heads', 'Heads'],
      ['lengths', 'Lengths'],
      ['shafts', 'Shafts'],
    ]);
  });

  test('hold what was hit, and what was only asked after does not count', () => {
    // Its question is about replacing a long iron; what was hit are hybrids.
    expect(slugs('hybrids')).toEqual(['two-clubs-for-200', 'hybrids-at-a-demo-day']);
    expect(slugs('irons')).toEqual(['range-ball-mid-iron', 'three-balls-one-iron', 'three-irons-after-work']);
    expect(slugs('balls')).toEqual(['range-ball-mid-iron', 'three-balls-one-iron']);
    expect(slugs('drivers')).toEqual(['inch-off-the-driver', 'three-shafts-eight-golfers']);
  });

  test('together hold every report, newest first', () => {
    expect(new Set(kinds.flatMap((kind) => kind.reports)).size).toBe(reports.length);
    for (const { reports: own } of kinds) {
      const dates = own.map(({ source }) => source.front.date);
      expect(dates).toEqual(dates.toSorted().reverse());
    }
  });

  test('that have one name are one, and one alone is none', () => {
    const turned = reports
      .filter(({ source }) => /three-irons|worn-grooves/.test(source.slug))
      .map((report) => ({ ...report, telling: { ...report.telling, nouns: 'Irons' } }));
    expect(reportKinds(turned).map(({ id, reports: own }) => [id, own.length])).toEqual([
      ['irons', 2],
      ['wedges', 1],
    ]);
    expect(reportKinds(turned.filter(({ source }) => source.slug.includes('irons')))).toEqual([]);
  });
});
