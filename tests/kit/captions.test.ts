import { describe, expect, test } from 'vitest';
import { primaryMetrics, surestFirst } from '../../src/prose/answer.ts';
import { pairSentence } from '../../src/prose/pairSentence.ts';
import { captions, captionLimits } from '../../src/kit/captions.ts';
import { interestInShort } from '../../src/kit/interestInShort.ts';
import { kitOf } from '../../src/kit/kitOf.ts';
import { fitSentences, sentencesOf } from '../../src/kit/sentences.ts';
import { offered, reports } from './content.ts';

describe.each(offered)('%s', (_name, report, figure) => {
  const told = captions(report, figure);

  test('fits its lengths and is whole sentences', () => {
    for (const length of ['short', 'middle', 'long'] as const) {
      expect(told[length].length, told[length]).toBeLessThanOrEqual(captionLimits[length]);
      expect(told[length].length).toBeGreaterThan(30);
      expect(told[length]).not.toMatch(/…|\.\.|undefined|null/);
    }
  });

  test('holds golfers, number of shots and an answer of the page even when shortest', () => {
    for (const caption of Object.values(told)) {
      expect(caption).toMatch(/golfers?, .*shots?/);
      const metrics = primaryMetrics(report.findings);
      const answers = metrics.flatMap((metric) =>
        surestFirst(metric).map((pair) => pairSentence(pair, metric, report.telling)),
      );
      expect(
        answers.some((answer) => caption.includes(answer)) || caption.includes('see the report'),
        caption,
      ).toBe(true);
    }
  });

  test('never drops a mark that the data are made up', () => {
    for (const caption of Object.values(told))
      expect(caption.includes('Invented data.')).toBe(report.source.front.inventedData);
  });

  test('names the shop’s interest wherever there is room for it', () => {
    expect(told.long).toContain(interestInShort(report));
    for (const caption of [told.middle, told.long]) expect(caption).toMatch(/sells/);
  });

  test('promises nothing and proves nothing', () => {
    for (const caption of Object.values(told))
      expect(caption).not.toMatch(
        /\b(proves?|guaranteed|you will|best|significant|no difference|winner|beats)\b/i,
      );
  });
});

test.each(reports.map((report) => [report.source.slug, report] as const))(
  '%s: the kit opens with the gaps, and says why a chart is not in it',
  (_slug, report) => {
    const { offered: items, notOffered } = kitOf(report);
    expect(items[0]?.figure.id).toBe('apart');
    expect(items.length + notOffered.length).toBe(report.figures.length);
    for (const { why } of notOffered) expect(why.length).toBeGreaterThan(10);
  },
);

test('sentences: figures and decimals end none', () => {
  expect(sentencesOf('About 9.5 yards; 6 to 13 would fit. Plover or Wren: cannot tell. (95 %)')).toEqual([
    'About 9.5 yards; 6 to 13 would fit.',
    'Plover or Wren: cannot tell. (95 %)',
  ]);
});

test('sentences are in whole or not at all, those of low rank first', () => {
  const ranked = [
    { text: 'Needed.', rank: 0 },
    { text: 'A long one that does not fit.', rank: 1 },
    { text: 'Short.', rank: 2 },
    { text: 'Last.', rank: 0 },
  ];
  expect(fitSentences(ranked, 25)).toBe('Needed. Short. Last.');
  expect(fitSentences(ranked, 100)).toBe('Needed. A long one that does not fit. Short. Last.');
});
