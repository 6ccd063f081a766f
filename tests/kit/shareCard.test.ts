import { describe, expect, test } from 'vitest';
import { cardWords } from '../../src/kit/cardWords.ts';
import { interestInBrief } from '../../src/kit/interestInShort.ts';
import type { Report } from '../../src/kit/report.ts';
import { reports } from './content.ts';
import { cardHeight, cardWidth, leastText, shareCard } from '../../src/kit/shareCard.ts';
import { findingTitle, mostWords, shareCardAlt } from '../../src/kit/shareCardWords.ts';
import { interestInEnglish } from '../../src/prose/english/interest.ts';
import { interestsOf, shortNames } from '../../src/prose/interestStatements.ts';
import { drawPixels } from '../../src/site/rasters.ts';
import { shown, sizesIn, textsIn } from './cardReports.ts';

const ink = 150;

/** The last row and column of the card in which something dark stands, px; the line along the upper edge apart. */
function inkIn(svg: string) {
  const { width, height, rgba } = drawPixels(svg, cardWidth);
  let [right, bottom] = [0, 0];
  for (let y = 11; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      if ((rgba[4 * (y * width + x)] ?? 255) > ink) continue;
      right = Math.max(right, x);
      bottom = Math.max(bottom, y);
    }
  }
  return { width, height, right, bottom };
}

test('there are reports of many kinds', () => {
  expect(shown.length).toBeGreaterThan(20);
});

describe.each(shown.map((report) => [report.source.slug, report] as const))(
  'the card of %s',
  (_, report: Report) => {
    const card = shareCard(report);
    const words = cardWords(report);
    const all = textsIn(card.svg).join(' ');

    test('is 1200 by 630 and holds everything within its margins', () => {
      expect(card.fits).toBe(true);
      const { width, height, right, bottom } = inkIn(card.svg);
      expect([width, height]).toEqual([1200, 630]);
      expect(right).toBeLessThan(cardWidth - 40);
      expect(bottom).toBeLessThan(cardHeight - 16);
    });

    test('has no letter under 22 px, and cuts nothing off', () => {
      const sizes = sizesIn(card.svg);
      expect(sizes.length).toBeGreaterThan(3);
      expect(Math.min(...sizes)).toBeGreaterThanOrEqual(leastText);
      expect(all).not.toContain('…');
    });

    test('names interest and outside money as the page does, or in words that are as exact', () => {
      const { whole, fewWords } = words.interest;
      const { front, shop } = report.source;
      const page = interestInEnglish(interestsOf(front), {
        speaker: 'we',
        nameOf: shortNames(front.contenders),
      });
      expect(whole).toBe(`${shop?.name ?? 'The publisher'} on its interest: ${page.join(' ')}`);
      expect(fewWords).toBe(interestInBrief(report));
      expect([whole, fewWords].some((told) => told !== '' && all.includes(told))).toBe(true);
    });

    test('says the finding in few words, of what and of how many golfers, and that data are invented', () => {
      const { head, findings, publisher } = words;
      const finding = findings.find((told) => all.includes(told)) ?? '';
      expect(finding).not.toBe('');
      expect(finding.split(' ').length).toBeLessThanOrEqual(mostWords);
      for (const told of [publisher, head]) expect(all).toContain(told);
      expect(head).toMatch(/ of .+, (?:one|two|three|four|five|six|seven|eight|nine|\d+) golfers?$/);
      expect(all.startsWith('Invented data.')).toBe(report.source.front.inventedData);
    });

    test('says when it was hit, and where and in which version the report stands', () => {
      expect(all).toMatch(/\b[Hh]it (?:\d+ \w+|\w+ \d+,) 20\d\d\./);
      expect(all.replaceAll(' ', '')).toContain(words.where.replaceAll(' ', ''));
    });

    test('is told to those who cannot see it, and has the finding for a title', () => {
      const alt = shareCardAlt(report);
      expect(words.findings.some((told) => alt.includes(told))).toBe(true);
      expect(alt).toContain(words.interest.whole);
      expect(findingTitle(report)).toMatch(/ golfers?: /);
      expect(findingTitle(report)).not.toMatch(/\.$/);
    });
  },
);

test('a demo report says it so', () => {
  const balls = reports.find(({ source }) => source.slug === 'three-balls-one-iron');
  if (balls === undefined) throw new Error('no balls');
  expect(shareCardAlt(balls)).toBe(
    'Invented data. Example Golf Workshop. Carry of balls, one golfer. Heron clearly past Wren and past Plover, size uncertain; Plover past Wren, size uncertain. Heron over Wren: about 12 yards, likely 8 to 15. Carry calculated, not watched. One right-handed golfer (staff fitter), club speed 83 to 85 mph, handicap 6-10. Hit 18 April 2026. Example Golf Workshop on its interest: We sell all three new and took them from stock, save Heron, which its distributor lent us. We paid for the test. We took no commission, sponsorship or gifts. Nobody outside the shop saw it before publication.',
  );
  expect(findingTitle(balls)).toBe('Carry of balls, one golfer: Heron past Plover, and both past Wren');
  const texts = textsIn(shareCard(balls).svg);
  expect(texts).toContain('Ring: best estimate. Bar: likely range. Hatched: too small to matter.');
  expect(texts).toContain('example.test/reports/three-balls-one-iron, version 1.0.0');
});
