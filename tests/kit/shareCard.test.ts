import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { drawPixels } from '../../src/site/rasters.ts';
import { cardHeight, cardWidth, leastText, shareCard } from '../../src/kit/shareCard.ts';
import { findingTitle, mostWords, shareCardAlt, shareCardWords } from '../../src/kit/shareCardWords.ts';
import type { Report } from '../../src/kit/report.ts';
import { interestInFewWords } from '../../src/prose/english/interestInFewWords.ts';
import { shortNames } from '../../src/prose/interestStatements.ts';
import { weighing } from '../../src/kit/interestInShort.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { reportOf } from '../findings/reportOf.ts';
import { writeTriedContent } from '../specimen-pages/triedContent.ts';
import { oddOnes, reports } from './content.ts';
import { sixHeads } from './sixHeads.ts';

const tried = mkdtempSync(join(tmpdir(), 'tried-'));
writeTriedContent(tried);

/** A shop with a long name and much to state, and names as long as they may be. */
const talkative = reportOf({
  shop: `name: ${'The Very Long Named Golf Workshop and Club Repair Company of the Northern Valleys'}\naddress: https://golf.example/a-long-folder/of-tests/\n`,
  front: {
    contenders:
      '{alder: {label: Whitebeam Pro 11, supplied_by: lent for three weeks by the distributor of Whitebeam in the north, sold_here: new},' +
      ' birch: {label: Rowanberry Max 7, supplied_by: given by its maker at the spring show, sold_here: both},' +
      ' cedar: {label: Honeysuckle Mk 2, supplied_by: lent by a customer who also hit it, sold_here: no}}',
    interests:
      '{paid_by: "the shop and the maker of Rowanberry, two thirds and one third", commission_or_gifts: "a staff bag and two dozen balls from the maker of Rowanberry", seen_before: "the maker of Rowanberry, the distributor of Whitebeam and the customer who hit", sentence: "We charge for fittings, and take the price off when a club is bought."}',
    invented_data: 'yes',
    corrections: '[{date: 2026-05-03, what: the loft, was: 9 degrees, now: 10.5 degrees}]',
  },
  shots: {
    'Carry (yd)': {
      'Whitebeam Pro 11': [237, 230, 241, 238, 234, 245, 236, 242, 231, 239, 233, 240],
      'Rowanberry Max 7': [231, 224, 235, 232, 228, 239, 230, 236, 225, 233, 227, 234],
      'Honeysuckle Mk 2': [225, 218, 229, 226, 222, 233, 224, 230, 219, 227, 221, 228],
    },
  },
});

const shown = [
  ...reports,
  ...oddOnes,
  ...loadSite(sixHeads()).reports,
  ...loadSite(tried).reports,
  talkative,
].filter(({ source }) => source.front.status !== 'withdrawn');

const textsIn = (svg: string): readonly string[] =>
  [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text = '']) =>
    text
      .replaceAll('&lt;', '<')
      .replaceAll('&gt;', '>')
      .replaceAll('&quot;', '"')
      .replaceAll('&#39;', "'")
      .replaceAll('&amp;', '&'),
  );
const ink = 150;

/** Rows and columns of the card in which something dark stands, px. */
function inkIn({ svg }: { readonly svg: string }) {
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
    const all = textsIn(card.svg).join(' ');

    test('is 1200 by 630 and holds everything within its margins', () => {
      expect(card.bottom).toBeLessThanOrEqual(cardHeight - 20);
      const { width, height, right, bottom } = inkIn(card);
      expect([width, height]).toEqual([1200, 630]);
      expect(right).toBeLessThan(cardWidth - 40);
      expect(bottom).toBeLessThan(cardHeight - 16);
    });

    test('has no letter under 22 px, and cuts nothing off', () => {
      const sizes = [...card.svg.matchAll(/font-size="([\d.]+)"/g)].map(([, size]) => Number(size));
      expect(sizes.length).toBeGreaterThan(3);
      expect(Math.min(...sizes)).toBeGreaterThanOrEqual(leastText);
      expect(all).not.toContain('…');
    });

    test('names interest and outside money as exactly as the fewest words can', () => {
      const { front } = report.source;
      const stated = interestInFewWords(weighing(front), {
        speaker: { shop: 'The shop' },
        nameOf: shortNames(front.contenders),
      });
      expect(stated.length).toBeGreaterThan(0);
      for (const words of stated) expect(all).toContain(words);
    });

    test('says the finding in few words, of what and of how many golfers, and that data are invented', () => {
      const { head, finding, publisher } = shareCardWords(report);
      expect(finding.split(' ').length).toBeLessThanOrEqual(mostWords);
      for (const words of [publisher, head, finding]) expect(all).toContain(words);
      expect(head).toMatch(/ of .+, (?:one|two|three|four|five|six|seven|eight|nine|\d+) golfers?$/);
      expect(all.includes('Invented data.')).toBe(report.source.front.inventedData);
    });

    test('is told to those who cannot see it, and has the finding for a title', () => {
      const { finding, interest } = shareCardWords(report);
      expect(shareCardAlt(report)).toContain(finding);
      expect(shareCardAlt(report)).toContain(interest);
      expect(findingTitle(report)).toMatch(/ golfers?: /);
      expect(findingTitle(report)).not.toMatch(/\.$/);
    });
  },
);

test('a demo report says it so', () => {
  const balls = reports.find(({ source }) => source.slug === 'three-balls-one-iron');
  if (balls === undefined) throw new Error('no balls');
  expect(shareCardAlt(balls)).toBe(
    'Example Golf Workshop. Invented data. Carry of balls, one golfer. Heron clearly past Wren and past Plover, size uncertain; Plover past Wren, size uncertain. Heron over Wren: about 12 yards, likely 8 to 15. Carry calculated, not watched. One right-handed golfer (staff fitter), club speed 83 to 85 mph, handicap 6-10. The shop sells all three. Heron was lent by its distributor.',
  );
  expect(findingTitle(balls)).toBe('Carry of balls, one golfer: Heron past Plover, and both past Wren');
  expect(textsIn(shareCard(balls).svg)).toContain(
    'Ring: best estimate. Bar: likely range. Hatched: too small to matter.',
  );
});
