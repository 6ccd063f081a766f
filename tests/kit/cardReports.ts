import { mkdtempSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Report } from '../../src/kit/report.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { reportOf } from '../findings/reportOf.ts';
import { writeTriedContent } from '../specimen-pages/triedContent.ts';
import { oddOnes, reports } from './content.ts';
import { sixHeads } from './sixHeads.ts';

const tried = mkdtempSync(join(tmpdir(), 'tried-'));
writeTriedContent(tried);

/** A shop with a long name and much to state, and names as long as they may be. */
export const talkative = reportOf({
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

/** A shop with more to state than any picture holds. */
export const verbose = reportOf({
  front: {
    interests: `{paid_by: the maker of Birch, commission_or_gifts: none, seen_before: nobody outside the shop, sentence: "${'We take a share of whatever is sold on the day. '.repeat(90).trim()}"}`,
  },
});

const cases = readdirSync(resolve('tests/cases'), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .flatMap(({ name }) => loadSite(resolve('tests/cases', name, 'content')).reports);

const all: readonly Report[] = [
  ...reports,
  ...oddOnes,
  ...loadSite(sixHeads()).reports,
  ...loadSite(tried).reports,
  ...cases,
  talkative,
];

/** Demo reports, and whatever else has a card: long names, six to compare, metres, corrected, replaced, much to state. */
export const shown: readonly Report[] = all.filter(({ source }) => source.front.status !== 'withdrawn');

export const withdrawn: readonly Report[] = all.filter(({ source }) => source.front.status === 'withdrawn');

/** Lines of text of a card. */
export function textsIn(svg: string): readonly string[] {
  return [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text = '']) =>
    text
      .replaceAll('&lt;', '<')
      .replaceAll('&gt;', '>')
      .replaceAll('&quot;', '"')
      .replaceAll('&#39;', "'")
      .replaceAll('&amp;', '&'),
  );
}

/** Sizes of the letters, px, with the words in each. */
export function sizesIn(svg: string): readonly number[] {
  return [...svg.matchAll(/font-size="([\d.]+)"/g)].map(([, size]) => Number(size));
}
