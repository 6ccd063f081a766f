import { describe, expect, test } from 'vitest';
import { primaryMetrics } from '../../src/prose/answers.ts';
import { altSentences } from '../../src/kit/altText.ts';
import { captions, captionLimits, captionSentences } from '../../src/kit/captions.ts';
import { answerOfFigure } from '../../src/kit/figureAnswer.ts';
import { always, fitParts, withRoom, within } from '../../src/kit/fitParts.ts';
import { kitOf } from '../../src/kit/kitOf.ts';
import type { Report } from '../../src/kit/report.ts';
import { said, textOf } from '../../src/kit/said.ts';
import { oddOnes, offered, reports } from './content.ts';

describe.each(offered)('%s', (_name, report, figure) => {
  const told = captions(report, figure);
  const sentences = captionSentences(report, figure);

  test('fits its lengths and is whole sentences', () => {
    for (const length of ['short', 'middle', 'long'] as const) {
      expect(told[length].length, told[length]).toBeLessThanOrEqual(captionLimits[length]);
      expect(told[length].length).toBeGreaterThan(30);
      expect(told[length]).not.toMatch(/…|\.\.|undefined|null|No figure/);
    }
  });

  test('never sends readers elsewhere for an answer, and has none of the phrases that say nothing', () => {
    for (const caption of Object.values(told))
      expect(caption).not.toMatch(
        /see the report|would fit|size unsure|cause is open|Others (paid|saw)|Leans to|\bturns?\b|\bhitters?\b|contender/i,
      );
  });

  test('says how many golfers hit', () => {
    for (const caption of Object.values(told)) expect(caption).toMatch(/\bgolfers?\b/);
  });

  test('never drops a mark that the data are made up, the report corrected or replaced', () => {
    const { front } = report.source;
    for (const caption of Object.values(told)) {
      expect(caption.includes('Invented data.')).toBe(front.inventedData);
      expect(caption.includes('Replaced')).toBe(front.status === 'superseded');
      expect(caption.includes('Corrected')).toBe(front.corrections.length > 0);
    }
  });

  test('says in the same breath where a flight model made the readings', () => {
    const answer = answerOfFigure(report, figure);
    if (answer?.block.calculatedBy !== 'flight-model') return;
    for (const caption of Object.values(told)) expect(caption).toMatch(/by our own flight model/i);
  });

  test('from 280 characters on has its address and an interest of the shop where there is one', () => {
    for (const caption of [told.middle, told.long])
      expect(caption).toContain(`/reports/${report.source.slug}/`);
    expect(
      sentences.long.some(({ kind }) => kind === 'interest'),
      told.long,
    ).toBe(true);
  });

  test('says no sentence twice', () => {
    for (const own of Object.values(sentences))
      expect(new Set(own.map(({ text }) => text)).size).toBe(own.length);
  });

  test('its alternative text has its measure with unit, golfers, shots, and all of its description or none', () => {
    for (const longest of [700, 320]) {
      const alt = textOf(altSentences(report, figure, longest));
      expect(alt.length).toBeLessThanOrEqual(longest);
      expect(alt).toMatch(/golfers?, .*shots? with each/);
      expect(alt.endsWith('Its numbers stand in the report.')).toBe(!alt.includes(figure.description));
    }
  });

  test('promises nothing and proves nothing', () => {
    for (const caption of Object.values(told))
      expect(caption).not.toMatch(
        /\b(proves?|guaranteed|you will|best|significant|no difference\.|winner|beats)\b/i,
      );
  });
});

test.each([...reports, ...oddOnes].map((report) => [report.source.slug, report] as const))(
  '%s: the kit opens with the differences, and says why a chart is not in it',
  (_slug, report) => {
    const { offered: items, notOffered } = kitOf(report);
    const judged = primaryMetrics(report.findings).some(({ pairs }) =>
      pairs.some(({ status }) => status !== 'not-judged'),
    );
    // Without a pair that was judged there is no chart of differences.
    expect(items[0]?.figure.chart).toBe(judged ? 'apart' : 'shots');
    expect(items.length + notOffered.length).toBe(report.figures.length);
    for (const { why } of notOffered) expect(why.length).toBeGreaterThan(10);
  },
);

const named = (slug: string): Report => {
  const report = reports.find(({ source }) => source.slug === slug);
  if (report === undefined) throw new Error(slug);
  return report;
};

/** Captions of a chart of a demo report. */
function of(slug: string, id: string): ReturnType<typeof captions> {
  const report = named(slug);
  const item = kitOf(report).offered.find(({ figure }) => figure.id === id);
  if (item === undefined) throw new Error(`${slug} does not give away ${id}`);
  return item.captions;
}

describe('a caption speaks of its own chart', () => {
  test('all shots of smash factor are captioned with the answer in smash factor, not in carry', () => {
    for (const caption of Object.values(of('inch-off-the-driver', 'shots-smash'))) {
      expect(caption).toMatch(/smash factor/i);
      expect(caption).not.toMatch(/\bcarry\b|\bcarried\b|yards|yd\b/i);
    }
    expect(of('inch-off-the-driver', 'shots').long).toMatch(/carry/i);
  });

  test('all shots of descent angle are captioned with the answer in descent angle', () => {
    const { short, middle, long } = of('two-clubs-for-200', 'shots-descent-angle');
    expect(short).toBe(
      'Descent angle, one golfer, 13 shots: the hybrid steeper than the fairway wood. One left-out shot decides. Invented data.',
    );
    for (const caption of [middle, long])
      expect(caption).toMatch(/^Average descent angle of clubs, .*41° with the hybrid/);
  });

  test('that the left-out shot decides stands on the charts of the answer that it decides, and on no other', () => {
    const report = named('two-clubs-for-200');
    for (const { figure, captions: told } of kitOf(report).offered) {
      const decided = figure.about.of !== 'report' && figure.about.metric === 'descent_angle';
      const tellsAnswer = figure.chart !== 'order';
      for (const caption of Object.values(told)) {
        const says = /shot decides|left out, we cannot tell|depends on|not so with the left-out shot/.test(
          caption,
        );
        if (!decided || tellsAnswer) expect(says, caption).toBe(decided);
      }
    }
  });

  test('the picture of the answer that it does not change says that it stays the same', () => {
    const { long } = of('two-clubs-for-200', 'with-and-without');
    expect(long).toContain('the same with the left-out shot counted.');
    expect(of('two-clubs-for-200', 'with-and-without-descent-angle').long).toContain(
      'not so with the left-out shot counted.',
    );
  });

  test('who paid half is told exactly or not at all', () => {
    const told = Object.values(of('fairway-woods-two-golfers', 'apart'));
    for (const caption of told) expect(caption).not.toMatch(/Others/);
    expect(told[1]).toContain('Paid for by the shop and the maker of Clover, half each.');
  });

  test('one stray shot and a swing that differed are told where they bear on the answer', () => {
    expect(of('hybrids-at-a-demo-day', 'apart').long).toMatch(/stray shot/);
    expect(of('inch-off-the-driver', 'apart').long).toContain(
      'differed by enough to explain the carry difference',
    );
    expect(of('inch-off-the-driver', 'apart-smash').long).not.toMatch(/swing/);
  });

  test('a short caption gives an answer and its reason', () => {
    expect(of('fairway-woods-two-golfers', 'hitters').short).toBe(
      'Carry, two golfers: on average Bracken past Clover for both, cause unclear. The maker of Clover co-paid. Invented data.',
    );
  });

  test('a short caption as an editor would print it, for each kind of chart', () => {
    const short = (slug: string, id: string): string => of(slug, id).short;
    expect(short('three-irons-after-work', 'apart')).toBe(
      'Carry, one golfer: Yarrow past Nettle and Teasel, cause unclear. Its distributor lent Yarrow. Invented data. Corrected.',
    );
    expect(short('fairway-woods-two-golfers', 'apart')).toBe(
      'Carry of heads, two golfers: Bracken and Fennel past Clover, cause unclear. The maker of Clover co-paid. Invented data.',
    );
    expect(short('range-ball-mid-iron', 'apart')).toBe(
      'Carry of balls, one golfer: the new ball past the range ball by about 1.5 yd, too little to matter. Invented data.',
    );
    expect(short('three-irons-after-work', 'order')).toBe(
      'Carry, one golfer, shot by shot: rose with Teasel and Yarrow. Its distributor lent Yarrow. Invented data. Corrected.',
    );
    expect(short('inch-off-the-driver', 'landing')).toBe(
      'Lengths, one golfer: Short finished nearer the line than Long, seen but not tested for. Invented data.',
    );
    expect(short('inch-off-the-driver', 'delivery')).toBe(
      'Lengths, one golfer: club speed was not the same with Long and Short. Invented data.',
    );
    expect(short('inch-off-the-driver', 'spread')).toBe(
      'Lengths, one golfer: Short was more consistent than Long in side, seen but not tested for. Invented data.',
    );
    expect(short('two-clubs-for-200', 'with-and-without-descent-angle')).toBe(
      'Descent angle, one golfer: the hybrid steeper than the fairway wood; not so with the left-out shot. Invented data.',
    );
  });
});

test('parts are in whole or not at all, those of low weight first', () => {
  const parts = [
    always(said('answer', 'Needed.')),
    withRoom(1, said('chart', 'A long one that does not fit.')),
    withRoom(2, said('chart', 'Short.')),
    always(said('stamp', 'Last.')),
  ];
  expect(textOf(fitParts(parts, within(25)))).toBe('Needed. Short. Last.');
  expect(textOf(fitParts(parts, within(100)))).toBe('Needed. A long one that does not fit. Short. Last.');
});

test('the best form for which there is room takes the place of a lesser one', () => {
  const parts = [
    [
      { weight: 0, said: said('answer', 'No.') },
      { weight: 1, said: said('answer', 'No, it was not.') },
      { weight: 3, said: said('answer', 'No, it was not, as far as anybody could tell.') },
    ],
    withRoom(2, said('caution', 'It rained.')),
  ];
  expect(textOf(fitParts(parts, within(10)))).toBe('No.');
  expect(textOf(fitParts(parts, within(15)))).toBe('No, it was not.');
  expect(textOf(fitParts(parts, within(30)))).toBe('No, it was not. It rained.');
  expect(textOf(fitParts(parts, within(60)))).toBe(
    'No, it was not, as far as anybody could tell. It rained.',
  );
});
