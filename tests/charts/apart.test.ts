import { describe, expect, test } from 'vitest';
import { beyondBand, type ApartPair, type JudgedPair } from '../../src/charts/apartRow.ts';
import type { DrawnFigure } from '../../src/charts/figure.ts';
import { gapWords } from './examples/gaps.ts';
import { exampleWords } from './examples/heads.ts';
import { brokenRules, parseSvg, placedTexts } from './inspectSvg.ts';
import { rowSigns } from './rowSigns.ts';
import { drawApart, type ApartInput } from '../../src/charts/apart.ts';
import { exampleFigure } from './examples/exampleFigure.ts';

const heads = ['Alder', 'Birch', 'Cedar', 'Dogwood', 'Elm', 'Fir'];
const longNames = [
  'Northern Pintail',
  'Hollow Oak Forged Mk II',
  'Wintergreen Extra Long Name',
  'Sassafrasandbuttonwood Z',
  'E',
  'F',
];

const judged = (
  [a, b]: readonly [number, number],
  [estimate, low, high]: readonly [number, number, number],
  answer: string,
  { names = heads, joined = 'over', open = false } = {},
): JudgedPair => ({
  kind: 'judged',
  name: `${names[a] ?? ''} ${joined} ${names[b] ?? ''}`,
  answer,
  estimate,
  low,
  high,
  open,
  printed: {
    estimate: Math.abs(estimate).toFixed(0),
    low: Math.abs(low).toFixed(0),
    high: Math.abs(high).toFixed(0),
  },
});

const input = (pairs: readonly ApartPair[], rest: Partial<ApartInput> = {}): ApartInput => ({
  ...exampleWords(
    'Carry of three driver heads',
    pairs.map((pair) => (pair.kind === 'judged' ? pair.name : pair.sentence)),
  ),
  ...gapWords,
  pairs,
  recorded: pairs.length,
  ends: { left: 'named second farther', right: 'named first farther' },
  ...rest,
});

/** Three heads, twelve invented shots each; the gaps of the design's worked example. */
const three = [
  judged([0, 2], [12.35, 6.64, 18.06], 'Clear difference'),
  judged([0, 1], [9.05, 2.24, 15.83], 'Difference, size uncertain'),
  judged([1, 2], [3.31, -3.49, 10.13], 'Cannot tell', { joined: 'and' }),
];

const notJudged: ApartPair = {
  kind: 'not-judged',
  sentence: 'We did not judge Cedar: four shots are too few.',
};

const allPairs = (count: number, names: readonly string[] = heads): readonly JudgedPair[] =>
  Array.from({ length: count }, (_, a) =>
    Array.from({ length: count - a - 1 }, (_unused, step) => {
      const b = a + step + 1;
      const gap = 3 * (b - a);
      return judged([a, b], [gap, gap - 6 - a, gap + 5 + b], 'Difference, size uncertain', {
        names: [...names],
      });
    }),
  ).flat();

const draw = (given: ApartInput): DrawnFigure => {
  const figure = exampleFigure('apart', drawApart(given));
  if (figure.kind !== 'drawn') throw new Error(figure.why);
  return figure;
};

/** Of every path of a bar that is not filled, the key's two first, how many boxes it has. */
const openBars = (svg: string): readonly string[] =>
  [...svg.matchAll(/<path[^>]* d="((?:M[^Z]+Z)+)"[^>]*>/g)]
    .filter(([path]) => path.includes('fill="var(--paper)"'))
    .map(([, d = '']) => String(d.split('Z').length - 1));

describe('How far apart?', () => {
  const figure = draw(input(three));

  test.each(['wide', 'narrow'] as const)('%s is drawn as it was approved', async (variant) => {
    await expect(figure.svg[variant].replaceAll('><', '>\n<')).toMatchFileSnapshot(
      `golden/apart-${variant}.svg`,
    );
  });

  test.each(['wide', 'narrow'] as const)(
    '%s: the scale runs from a little beyond the band to the greatest limit, what the first-named has more to the right',
    (variant) => {
      const svg = figure.svg[variant];
      const width = variant === 'wide' ? 720 : 288;
      const { rings, thin, thick } = rowSigns(svg);
      expect(rings).toHaveLength(3);
      const yard = ((rings[0] ?? 0) - (rings[2] ?? 0)) / (12.35 - 3.31);
      const zero = (rings[0] ?? 0) - 12.35 * yard;
      // Zero lies nearer the left, the band just inside that edge, the greatest limit just inside the other.
      expect(zero / width).toBeLessThan(0.3);
      expect(zero - 5 * yard).toBeGreaterThan(4);
      expect(zero - 5 * yard).toBeLessThan(0.08 * width);
      const ends = thick.flat();
      expect(Math.max(...ends)).toBeCloseTo(zero + 18.06 * yard, 0);
      expect(Math.max(...ends)).toBeGreaterThan(0.9 * width);
      expect(Math.min(...(thin[2] ?? []))).toBeCloseTo(zero - 3.49 * yard, 0);
      // The band's edge is where the thick part begins.
      expect(Math.min(...(thick[1] ?? []))).toBeCloseTo(zero + 5 * yard, 0);
    },
  );

  test('a limit beyond the band on the left moves the start of the scale', () => {
    const pair = judged([0, 1], [2, -20, 24], 'Cannot tell', { joined: 'and' });
    const { thin } = rowSigns(draw(input([pair])).svg.wide);
    expect(Math.min(...(thin[0] ?? []))).toBeGreaterThan(4);
    expect(Math.min(...(thin[0] ?? []))).toBeLessThan(50);
  });

  test.each(['wide', 'narrow'] as const)(
    '%s: numbers count outward without signs, the last with its unit, and the ends say who is farther there',
    (variant) => {
      const words = placedTexts(figure.svg[variant]).map(({ text }) => text);
      expect(words.filter((text) => /[\u2212-]\d/.test(text))).toEqual([]);
      expect(words).toContain('15 yards');
      expect(words.join(' ')).toContain('named second farther');
      expect(words.join(' ')).toContain('named first farther');
    },
  );

  test.each(['wide', 'narrow'] as const)('%s: every sign is named in the chart itself', (variant) => {
    const said = placedTexts(figure.svg[variant]).map(({ text }) => text);
    expect(said.slice(0, 3)).toEqual(['best estimate', 'likely range', 'large enough to matter']);
    expect(said).toContain('too small to matter, under 5 yards');
    expect(said.join(' ')).toContain('95% confidence, all three pairs together');
  });

  test('the words over the band stand over it once, between the first pair and its bar', () => {
    const texts = placedTexts(figure.svg.wide);
    const over = texts.filter(({ text }) => text.startsWith('too small'));
    expect(over).toHaveLength(1);
    const name = texts.find(({ text }) => text === 'Alder over Cedar');
    const number = texts.find(({ text }) => text === '12');
    expect(over[0]?.y).toBeGreaterThan(name?.y ?? Infinity);
    expect(over[0]?.y).toBeLessThan(number?.y ?? 0);
  });

  test('a pair whose cause is open has a bar that is not filled, and the key says what that means', () => {
    const open = 'not filled: we cannot say that it was the head';
    const pairs = [
      judged([0, 1], [9, 2, 16], 'Difference seen, cause unclear', { open: true }),
      ...three.slice(2),
    ];
    const { svg } = draw(input(pairs, { key: { ...gapWords.key, open } }));
    for (const drawn of [svg.wide, svg.narrow]) {
      expect(openBars(drawn)).toEqual(['1', '1', '1', '1']);
      expect(
        placedTexts(drawn)
          .map(({ text }) => text)
          .join(' '),
      ).toContain(open);
    }
    expect(openBars(figure.svg.wide)).toEqual([]);
  });

  test('three pairs stand within 430 px, six within 560', () => {
    const heightOf = (svg: string): number => Number(parseSvg(svg).getAttribute('height'));
    expect(heightOf(figure.svg.wide)).toBeLessThanOrEqual(430);
    expect(heightOf(figure.svg.narrow)).toBeLessThanOrEqual(430);
    expect(heightOf(draw(input(allPairs(4))).svg.wide)).toBeLessThanOrEqual(560);
  });

  test('the bar is thick outside the band only', () => {
    expect(beyondBand(7, 18, 5)).toEqual([[7, 18]]);
    expect(beyondBand(2, 16, 5)).toEqual([[5, 16]]);
    expect(beyondBand(-3, 3, 5)).toEqual([]);
    expect(beyondBand(-9, 8, 5)).toEqual([
      [-9, -5],
      [5, 8],
    ]);
    expect(beyondBand(-5, 5, 5)).toEqual([]);
    expect(beyondBand(2, 2, 0)).toEqual([]);
  });

  test.each(['wide', 'narrow'] as const)(
    '%s: numbers that would touch are moved apart, in their order',
    (variant) => {
      const close = judged([0, 1], [0.4, -0.6, 1.3], 'No difference that matters', { joined: 'and' });
      const far = judged([0, 2], [40, 10, 70], 'Clear difference');
      const texts = placedTexts(draw(input([far, close])).svg[variant]);
      const row = texts.find(({ text, size }) => text === '0' && size === 15);
      const numbers = texts.filter(({ y }) => y === row?.y).toSorted((x, y) => x.left - y.left);
      expect(numbers.map(({ text }) => text)).toEqual(['1', '0', '1']);
    },
  );

  test('a bar that would hide behind the ring is drawn over it', () => {
    const tiny = judged([0, 1], [1, 0.9, 1.1], 'No difference that matters');
    const far = judged([0, 2], [40, 10, 70], 'Clear difference');
    const svg = draw(input([tiny, far])).svg.narrow;
    const order = [...parseSvg(svg).querySelectorAll('circle[r="7"], path[stroke-width="2.5"]')].map(
      ({ tagName }) => tagName.toLowerCase(),
    );
    // The key's two bars come first.
    expect(order).toEqual(['path', 'path', 'circle', 'path', 'path', 'circle']);
  });

  test('a pair that was not judged has its words and no signs', () => {
    const svg = draw(input([three[0] as JudgedPair, notJudged])).svg.narrow;
    expect(rowSigns(svg).rings).toHaveLength(1);
    expect(
      placedTexts(svg)
        .map(({ text }) => text)
        .join(' '),
    ).toContain('We did not judge Cedar: four shots are too few.');
  });

  test('what was not judged is said once, however many pairs it keeps from being judged', () => {
    const svg = draw(input([three[0] as JudgedPair, notJudged, notJudged])).svg.wide;
    const said = placedTexts(svg).filter(({ text }) => text.startsWith('We did not judge'));
    expect(said).toHaveLength(1);
  });

  test('the figure says how many pairs only the table has', () => {
    const pairs = allPairs(5);
    const table = { caption: 'Numbers', head: ['Row'], rows: pairs.map(({ name }) => [name]) };
    const { drawn, recorded, counted } = draw(input(pairs.slice(0, 4), { recorded: 10, table }));
    expect({ drawn, recorded, counted }).toEqual({ drawn: 4, recorded: 10, counted: 'pairs' });
  });

  const cases: readonly (readonly [string, ApartInput])[] = [
    ['three heads', input(three)],
    [
      'two heads, intervals far inside the band',
      input([judged([0, 1], [0.4, -0.6, 1.3], 'No difference that matters', { joined: 'and' })]),
    ],
    [
      'an interval far wider than the band',
      input([judged([0, 1], [20, -160, 200], 'Cannot tell', { joined: 'and' }), notJudged]),
    ],
    [
      'an interval of no width at nought and no band',
      input([judged([0, 1], [0, 0, 0], 'No difference that matters')], { matters: 0 }),
    ],
    ['four heads', input(allPairs(4))],
    ['six heads', input(allPairs(6))],
    ['long names', input(allPairs(4, longNames))],
    [
      'small units',
      input([judged([0, 1], [0.034, 0.011, 0.057], 'Difference, size uncertain')], {
        matters: 0.02,
        unit: '',
        bandWords: 'too small to matter, under 0.02',
        ends: { left: 'named second higher', right: 'named first higher' },
      }),
    ],
    [
      'large units',
      input(
        [
          {
            ...judged([0, 1], [1450, 260, 2140], 'Difference, size uncertain'),
            printed: { estimate: '1,450', low: '260', high: '2,140' },
          },
        ],
        {
          matters: 300,
          unit: 'rpm',
          bandWords: 'too small to matter, under 300 rpm',
          ends: { left: 'named second spun more', right: 'named first spun more' },
        },
      ),
    ],
    [
      'long ends',
      input(three, {
        ends: {
          left: 'named second farther right of its path',
          right: 'named first farther right of its path',
        },
      }),
    ],
  ];
  test.each(cases)('%s: text large enough, apart and inside; ids, names and numbers in order', (_, given) => {
    const { svg } = draw(given);
    expect(brokenRules(svg.wide)).toEqual([]);
    expect(brokenRules(svg.narrow)).toEqual([]);
  });

  test('wide and narrow share no id', () => {
    const ids = (svg: string): readonly string[] =>
      [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id ?? '');
    const wide = ids(figure.svg.wide);
    expect(ids(figure.svg.narrow).filter((id) => wide.includes(id))).toEqual([]);
  });

  test('two drawings are the same bytes', () => {
    expect(draw(input(three)).svg).toEqual(figure.svg);
  });

  test('without a judged pair there is no chart but a reason', () => {
    expect(exampleFigure('apart', drawApart(input([notJudged])))).toEqual({
      kind: 'absent',
      id: 'apart',
      chart: 'apart',
      about: { of: 'metric', metric: 'carry' },
      question: 'How far apart?',
      why: 'No two of them had enough shots to be judged.',
    });
  });

  test.each([
    [
      'an interval upside down',
      input([judged([0, 1], [9, 16, 2], '')]),
      'low 16, estimate 9 and high 2 must be numbers',
    ],
    [
      'a gap that is no number',
      input([judged([0, 1], [Number.NaN, 2, 16], '')]),
      'Alder over Birch: low 2, estimate NaN',
    ],
    ['a negative gap that matters', input(three, { matters: -1 }), 'The gap that matters is -1'],
    [
      'a table without all pairs',
      input(three, { table: { caption: '', head: [], rows: [] } }),
      'The table has 0 rows for 3 pairs',
    ],
  ])('refuses %s', (_, given, message) => {
    expect(() => drawApart(given)).toThrow(message);
  });
});
