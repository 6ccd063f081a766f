import { describe, expect, test } from 'vitest';
import { apartChart, pairsDrawn } from '../../src/charts/apart.ts';
import type { ApartInput, ApartPair, JudgedPair } from '../../src/charts/apartInput.ts';
import { beyondBand } from '../../src/charts/apartRow.ts';
import type { DrawnFigure } from '../../src/charts/figure.ts';
import { exampleWords } from './examples/heads.ts';
import { brokenRules, inherited, parseSvg, placedTexts } from './inspectSvg.ts';

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
  sentence: string,
  numbers: string,
  names = heads,
): JudgedPair => ({
  kind: 'judged',
  a: { label: names[a] ?? '', index: a },
  b: { label: names[b] ?? '', index: b },
  estimate,
  low,
  high,
  sentence,
  numbers,
  printed: {
    estimate: Math.abs(estimate).toFixed(0),
    low: Math.abs(low).toFixed(0),
    high: Math.abs(high).toFixed(0),
  },
});

const input = (pairs: readonly ApartPair[], rest: Partial<ApartInput> = {}): ApartInput => ({
  ...exampleWords(
    'apart',
    'How far apart?',
    'Carry of three driver heads',
    pairs.map(({ a, b }) => `${a.label} and ${b.label}`),
  ),
  pairs,
  matters: 5,
  axis: 'yards farther',
  legend: 'Under 5 yards: too small to matter',
  ...rest,
});

/** Three heads, twelve invented shots each; the gaps of the design's worked example. */
const three = [
  judged(
    [0, 1],
    [9.05, 2.24, 15.83],
    'Alder farther than Birch, size unsure.',
    'About 9 yards, likely 2 to 16.',
  ),
  judged(
    [0, 2],
    [12.35, 6.64, 18.06],
    'Alder clearly farther than Cedar.',
    'About 12 yards, likely 7 to 18.',
  ),
  judged(
    [1, 2],
    [3.31, -3.49, 10.13],
    'Birch or Cedar: cannot tell.',
    'Anything from 10 yards for Birch to 3 for Cedar.',
  ),
];

const notJudged: ApartPair = {
  kind: 'not-judged',
  a: { label: 'Alder', index: 0 },
  b: { label: 'Cedar', index: 2 },
  sentence: 'Cedar: not judged, four shots are too few.',
  numbers: '',
};

const allPairs = (count: number, names = heads): readonly JudgedPair[] =>
  Array.from({ length: count }, (_, a) =>
    Array.from({ length: count - a - 1 }, (_unused, step) => {
      const b = a + step + 1;
      const gap = 3 * (b - a) * (b % 2 === 0 ? -1 : 1);
      return judged(
        [a, b],
        [gap, gap - 6 - a, gap + 5 + b],
        `${names[a]} farther than ${names[b]}, size unsure.`,
        `About ${Math.abs(gap)} yards, likely 2 to 16.`,
        names,
      );
    }),
  ).flat();

const draw = (given: ApartInput): DrawnFigure => {
  const figure = apartChart(given);
  if (figure.kind !== 'drawn') throw new Error(figure.why);
  return figure;
};

/** The ring and the stretches of the bar of every row, px. */
const signs = (svg: string) => {
  const root = parseSvg(svg);
  const across = (width: string): readonly (readonly number[])[] =>
    [...root.querySelectorAll('path')]
      .filter(
        (path) => inherited(path, 'stroke-width') === width && inherited(path, 'stroke') === 'var(--ink)',
      )
      .map((path) =>
        [...(path.getAttribute('d') ?? '').matchAll(/[ML](-?[\d.]+),/g)].map(([, x]) => Number(x)),
      );
  return {
    rings: [...root.querySelectorAll('circle')]
      .filter((circle) => circle.getAttribute('r') === '7')
      .map((circle) => Number(circle.getAttribute('cx'))),
    thin: across('2.5'),
    thick: across('9'),
  };
};

describe('How far apart?', () => {
  const figure = draw(input(three));

  test.each(['wide', 'narrow'] as const)('%s is drawn as it was approved', async (variant) => {
    await expect(figure.svg[variant].replaceAll('><', '>\n<')).toMatchFileSnapshot(
      `golden/apart-${variant}.svg`,
    );
  });

  test('the ring leans to the left end, where the first of the pair stands, when that one had more', () => {
    const { rings } = signs(figure.svg.wide);
    expect(rings).toHaveLength(3);
    for (const x of rings) expect(x).toBeLessThan(360);
    const turned = judged([0, 1], [-9.05, -15.83, -2.24], 'Birch farther than Alder.', 'About 9 yards.');
    expect(signs(draw(input([turned])).svg.wide).rings[0]).toBeGreaterThan(360);
  });

  test('a yard is as long to the left as to the right, and the bar ends where the interval does', () => {
    const mirrored = [judged([0, 1], [8, 2, 14], 'A.', ''), judged([0, 2], [-8, -14, -2], 'B.', '')];
    const { rings, thin } = signs(draw(input(mirrored)).svg.wide);
    const [left = [], right = []] = thin;
    expect(left.map((x) => (720 - x).toFixed(1)).sort()).toEqual(right.map((x) => x.toFixed(1)).sort());
    const yard = (360 - (rings[0] ?? 0)) / 8;
    expect(Math.min(...left)).toBeCloseTo(360 - 14 * yard, 0);
    expect(Math.max(...left)).toBeCloseTo(360 - 2 * yard, 0);
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

  test('numbers at the ends of a bar are dropped near the ring, the ring keeps its own', () => {
    const close = judged([0, 1], [0.4, -0.6, 1.3], 'No gap that matters.', 'Any gap is under 5 yards.');
    const numbers = placedTexts(draw(input([close])).svg.narrow).filter(({ size }) => size === 15);
    expect(numbers.map(({ text }) => text)).toEqual(['0']);
    const [row = []] = [placedTexts(draw(input([close])).svg.narrow).map(({ text }) => text)];
    expect(row.filter((text) => text === '1')).toEqual([]);
  });

  test('a bar that would hide behind the ring is drawn over it', () => {
    const tiny = judged([0, 1], [1, 0.9, 1.1], 'No gap that matters.', 'Any gap is under 5 yards.');
    const far = judged([0, 2], [40, 10, 70], 'Clearly farther.', '');
    const svg = draw(input([tiny, far])).svg.narrow;
    const order = [...parseSvg(svg).querySelectorAll('circle[r="7"], path[stroke-width="2.5"]')].map(
      ({ tagName }) => tagName.toLowerCase(),
    );
    expect(order).toEqual(['circle', 'path', 'path', 'circle']);
  });

  test('a pair that was not judged has its words and no signs', () => {
    const svg = draw(input([three[0] as JudgedPair, notJudged])).svg.narrow;
    expect(signs(svg).rings).toHaveLength(1);
    expect(
      placedTexts(svg)
        .map(({ text }) => text)
        .join(' '),
    ).toContain('Cedar: not judged, four shots are too few.');
  });

  test('beyond six pairs only those with the first contender are drawn, and the figure says so', () => {
    const pairs = allPairs(5);
    expect(pairsDrawn(pairs).map(({ b }) => b.label)).toEqual(['Birch', 'Cedar', 'Dogwood', 'Elm']);
    const { drawn, recorded, counted } = draw(input(pairs));
    expect({ drawn, recorded, counted }).toEqual({ drawn: 4, recorded: 10, counted: 'pairs' });
    expect(pairsDrawn(allPairs(4))).toHaveLength(6);
  });

  const cases: readonly (readonly [string, ApartInput])[] = [
    ['three heads', input(three)],
    [
      'two heads, intervals far inside the band',
      input([judged([0, 1], [0.4, -0.6, 1.3], 'Level.', 'Any gap is under 5.')]),
    ],
    [
      'an interval far wider than the band',
      input([judged([0, 1], [20, -160, 200], 'Cannot tell.', 'Anything from 200 to 160.'), notJudged]),
    ],
    [
      'an interval of no width at nought and no band',
      input([judged([0, 1], [0, 0, 0], 'Level.', 'No gap.')], { matters: 0 }),
    ],
    ['four heads', input(allPairs(4))],
    ['six heads', input(allPairs(6))],
    ['long names', input(allPairs(4, longNames))],
    [
      'small units',
      input([judged([0, 1], [0.034, 0.011, 0.057], 'Alder more smash.', 'About 0.03.')], {
        matters: 0.02,
        axis: 'more smash factor',
        legend: 'Under 0.02: too small to matter',
      }),
    ],
    [
      'large units',
      input(
        [
          {
            ...judged([0, 1], [1450, 260, 2140], 'Alder more spin.', 'About 1,450 rpm, likely 260 to 2,140.'),
            printed: { estimate: '1,450', low: '260', high: '2,140' },
          },
        ],
        { matters: 300, axis: 'rpm more spin', legend: 'Under 300 rpm: too small to matter' },
      ),
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
    expect(apartChart(input([notJudged]))).toEqual({
      kind: 'absent',
      id: 'apart',
      chart: 'apart',
      about: { of: 'metric', metric: 'carry' },
      question: 'How far apart?',
      why: 'No two of them had shots enough to be judged.',
    });
  });

  test.each([
    [
      'an interval upside down',
      input([judged([0, 1], [9, 16, 2], '', '')]),
      'low 16, estimate 9 and high 2 must be numbers',
    ],
    [
      'a gap that is no number',
      input([judged([0, 1], [Number.NaN, 2, 16], '', '')]),
      'Alder and Birch: low 2, estimate NaN',
    ],
    ['a negative gap that matters', input(three, { matters: -1 }), 'The gap that matters is -1'],
    ['a seventh contender', input([judged([0, 6], [9, 2, 16], '', '')]), 'not for number 7'],
    [
      'a table without all pairs',
      input(three, { table: { caption: '', head: [], rows: [] } }),
      'The table has 0 rows for 3 pairs',
    ],
  ])('refuses %s', (_, given, message) => {
    expect(() => apartChart(given)).toThrow(message);
  });
});
