import { describe, expect, test } from 'vitest';
import { primaryMetrics, surestFirst } from '../../src/prose/answer.ts';
import { pairSentence } from '../../src/prose/pairSentence.ts';
import { captions, captionLimits } from '../../src/kit/captions.ts';
import { altText } from '../../src/kit/altText.ts';
import { kitOf } from '../../src/kit/kitOf.ts';
import { fitSentences, sentencesOf } from '../../src/kit/sentences.ts';
import { oddOnes, offered, reports } from './content.ts';

describe.each(offered)('%s', (_name, report, figure) => {
  const told = captions(report, figure);

  test('fits its lengths and is whole sentences', () => {
    for (const length of ['short', 'middle', 'long'] as const) {
      expect(told[length].length, told[length]).toBeLessThanOrEqual(captionLimits[length]);
      expect(told[length].length).toBeGreaterThan(30);
      expect(told[length]).not.toMatch(/…|\.\.|undefined|null|No figure/);
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

  test('never drops a mark that the data are made up, the report corrected or replaced', () => {
    const { front } = report.source;
    for (const caption of Object.values(told)) {
      expect(caption.includes('Invented data.')).toBe(front.inventedData);
      expect(caption.includes('Replaced')).toBe(front.status === 'superseded');
      expect(caption.includes('Corrected')).toBe(front.corrections.length > 0);
    }
  });

  test('says in the same breath where a flight model made the readings, or the chart', () => {
    const [metric] = primaryMetrics(report.findings);
    for (const [length, caption] of Object.entries(told)) {
      if (metric?.readBy === 'flight-model')
        expect(caption).toMatch(/flight model|calculated|see the report/);
      if (/^(yards|launch-and-spin)/.test(figure.id) && length !== 'short')
        expect(caption).toContain('An estimate by a flight model, not measured.');
    }
  });

  test('names the shop’s interest wherever there is room for it', () => {
    for (const caption of [told.middle, told.long])
      expect(caption).toMatch(/sells|The report states more of its interest\./);
    const { interests } = report.source.front;
    if (interests.commissionOrGifts.kind !== 'none')
      for (const caption of [told.middle, told.long]) expect(caption).toMatch(/commission/i);
  });

  test('says no sentence twice', () => {
    for (const caption of Object.values(told)) {
      const sentences = sentencesOf(caption);
      expect(new Set(sentences).size).toBe(sentences.length);
    }
  });

  test('its alternative text begins at the beginning and leaves no sentence without the one before it', () => {
    const alt = altText(report, figure);
    expect(alt.length).toBeLessThanOrEqual(700);
    const said = sentencesOf(alt);
    const all = sentencesOf(figure.description);
    const from = said.indexOf(all[0] ?? '');
    const rest = said.slice(from).filter((words) => words !== 'The report has the rest.');
    expect(rest).toEqual(all.slice(0, rest.length));
    expect(alt.endsWith('The report has the rest.')).toBe(rest.length < all.length);
  });

  test('promises nothing and proves nothing', () => {
    for (const caption of Object.values(told))
      expect(caption).not.toMatch(
        /\b(proves?|guaranteed|you will|best|significant|no difference|winner|beats)\b/i,
      );
  });
});

test.each([...reports, ...oddOnes].map((report) => [report.source.slug, report] as const))(
  '%s: the kit opens with the gaps, and says why a chart is not in it',
  (_slug, report) => {
    const { offered: items, notOffered } = kitOf(report);
    const judged = primaryMetrics(report.findings).some(({ pairs }) =>
      pairs.some(({ verdict }) => verdict !== 'not-judged'),
    );
    // Without a pair that was judged there is no chart of gaps.
    expect(items[0]?.figure.id).toBe(judged ? 'apart' : 'shots');
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
