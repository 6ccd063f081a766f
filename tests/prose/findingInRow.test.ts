import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { findingInRow } from '../../src/prose/english/findingInRow.ts';
import { primaryMetrics } from '../../src/prose/answers.ts';
import type { Telling } from '../../src/prose/telling.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { inOtherUnits } from '../../src/site/toldTwice.ts';
import { oddReports } from '../kit/oddReports.ts';

const demo = loadSite(resolve('content')).reports;
const odd = loadSite(oddReports()).reports;
const both = (telling: Telling): readonly Telling[] => [telling, inOtherUnits(telling)];
const all = [...demo, ...odd].flatMap(({ source, telling }) =>
  both(telling).map((one) => [`${source.slug} in ${one.system}`, one] as const),
);
const finding = (slug: string): string => {
  const found = [...demo, ...odd].find(({ source }) => source.slug === slug);
  if (found === undefined) throw new Error(`no ${slug}`);
  return findingInRow(found.telling);
};

describe.each(all)('%s', (_name, telling) => {
  const told = findingInRow(telling);

  test('is of whole sentences with a number', () => {
    expect(told).toMatch(/^\p{Lu}[\s\S]*\.$/u);
    expect(told).toMatch(/\d|four shots/);
    expect(told).not.toMatch(/undefined|NaN| {2}|\.\.|, \./);
  });

  test('names everybody, or counts those it does not name', () => {
    const { contenders } = telling.findings;
    const said = told.toLowerCase();
    const named = contenders.filter(({ id }) => said.includes(telling.the(id).toLowerCase()));
    const counts =
      /both others|from either|any other|the other (?:three|four|five)|pairs apart|the (?:three|four|five|six) /i;
    expect(named.length === contenders.length || counts.test(told), told).toBe(true);
  });

  test('credits nobody where the order leaves the cause open', () => {
    const [metric] = primaryMetrics(telling.findings);
    const open = metric?.pairs.some(({ status }) => status === 'cause-unclear') === true;
    expect(/may not be|to say that it was/.test(told)).toBe(open);
  });
});

test.each(demo.map((report) => [report.source.slug, report.telling] as const))(
  '%s: fits two lines beside its picture in both systems of units',
  (_slug, telling) => {
    // Two lines of the column at 1,280 px hold some 98 characters each.
    for (const one of both(telling)) expect(findingInRow(one).length).toBeLessThan(196);
  },
);

test('each kind of answer in words', () => {
  expect(finding('three-balls-one-iron')).toBe(
    'Heron carried farther than Wren, likely by 8 to 15 yards, and than Plover, likely by up to 10 yards. Plover carried farther than Wren, likely by 1 to 12 yards.',
  );
  expect(finding('three-shafts-eight-golfers')).toBe(
    'For golfers like these, Sorrel carried farther than both others, likely by 2 to 11 yards. Rowan and Tansy were within about 4 yards of each other.',
  );
  expect(finding('range-ball-mid-iron')).toBe(
    'The new ball carried about 1.5 yards farther than the range ball, too little to matter.',
  );
  expect(finding('two-clubs-for-200')).toBe(
    'We cannot tell whether the fairway wood or the hybrid carried farther: anything from 8 yards for the fairway wood to 6 for the hybrid.',
  );
  expect(finding('fairway-woods-two-golfers')).toBe(
    'On average over these two golfers, Bracken and Fennel carried farther than Clover, likely by up to 9 yards, in too few spells to say that it was the head. We cannot tell Bracken and Fennel apart.',
  );
  expect(finding('four-shots-each')).toBe(
    'We did not judge Hawthorn & Co 90, Blackthorn "Mid" and Rowanberry <Max>: four shots are too few.',
  );
});

test('with nothing to judge it says so', () => {
  const [report] = demo;
  if (report === undefined) throw new Error('no report');
  expect(findingInRow({ ...report.telling, findings: { ...report.findings, metrics: [] } })).toBe(
    'Nothing was judged.',
  );
});
