import { describe, expect, test } from 'vitest';
import type { DrawnFigure, Figure } from '../../src/charts/figure.ts';
import {
  exampleGap,
  golferRowsOf,
  pairedGaps,
  withAndWithoutExample,
  withAndWithoutOf,
  yardsExample,
} from './examples/gaps.ts';
import { heads, longNames } from './examples/heads.ts';
import { brokenRules, inherited, parseSvg, placedTexts } from './inspectSvg.ts';
import { rowSigns } from './rowSigns.ts';
import { drawPooledRows } from '../../src/charts/pooledRows.ts';
import { drawWithAndWithout } from '../../src/charts/withAndWithout.ts';
import { drawYards } from '../../src/charts/yards.ts';
import { exampleFigure } from './examples/exampleFigure.ts';

const drawn = (figure: Figure): DrawnFigure => {
  if (figure.kind !== 'drawn') throw new Error(figure.why);
  return figure;
};

const words = (svg: string): readonly string[] => placedTexts(svg).map(({ text }) => text);
const variants = ['wide', 'narrow'] as const;
const long = { a: { label: longNames[2], index: 0 }, b: { label: longNames[3], index: 5 } };

const approved = async (figure: DrawnFigure, variant: 'wide' | 'narrow'): Promise<void> => {
  await expect(figure.svg[variant].replaceAll('><', '>\n<')).toMatchFileSnapshot(
    `golden/${figure.id}-${variant}.svg`,
  );
};

const keepsRules = (figure: Figure): void => {
  for (const variant of variants) expect(brokenRules(drawn(figure).svg[variant])).toEqual([]);
};

describe('Golfer by golfer', () => {
  const figure = drawn(exampleFigure('hitters', drawPooledRows(golferRowsOf(6))));

  test.each(variants)('%s is drawn as it was approved', (variant) => approved(figure, variant));

  test.each(variants)('%s: each gap on one scale, to the right where the first had more', (variant) => {
    const gaps = [...golferRowsOf(6).each.map(({ estimate }) => estimate ?? 0), 4];
    const { rings } = rowSigns(figure.svg[variant]);
    expect(rings).toHaveLength(7);
    const yard = ((rings[1] ?? 0) - (rings[0] ?? 0)) / ((gaps[1] ?? 0) - (gaps[0] ?? 0));
    expect(yard).toBeGreaterThan(0);
    for (const [index, gap] of gaps.entries())
      expect(rings[index]).toBeCloseTo((rings[0] ?? 0) + (gap - (gaps[0] ?? 0)) * yard, 0);
  });

  test('another golfer has a bar and no ring', () => {
    const { rings, thin } = rowSigns(figure.svg.wide);
    expect([rings.length, thin.length]).toEqual([7, 8]);
    expect(words(figure.svg.wide)).toContain('Another golfer');
  });

  test('bars are thick outside the band only', () => {
    const inBand = exampleGap('Inside', 1, -4, 4);
    const { thin, thick } = rowSigns(
      drawn(
        exampleFigure(
          'hitters',
          drawPooledRows(golferRowsOf(2, { each: [inBand, inBand], pooled: null, another: null })),
        ),
      ).svg.wide,
    );
    expect([thin.length, thick.length]).toEqual([2, 0]);
  });

  test.each([
    ['two', golferRowsOf(2, { pooled: null, another: null })],
    ['twenty', golferRowsOf(20)],
    ['long names', golferRowsOf(6, long)],
    [
      'long words and a golfer without a gap',
      golferRowsOf(3, {
        each: [
          exampleGap('Golfer one of the regulars, 84 mph with the driver', 3, -3, 9),
          exampleGap(
            'Golfer 2',
            -160,
            -200,
            90,
            undefined,
            'anything from 200 yards for Sassafrasandbuttonwood Z to 90 for Alder',
          ),
          {
            name: 'Golfer 3',
            estimate: null,
            interval: null,
            printed: null,
            figure: '',
            words: 'hit only one of the two',
          },
        ],
      }),
    ],
    ['no band', golferRowsOf(4, { matters: 0 })],
    [
      'nothing but noughts',
      golferRowsOf(2, {
        each: [exampleGap('A', 0, 0, 0), exampleGap('B', 0, 0, 0)],
        pooled: null,
        another: null,
        matters: 0,
      }),
    ],
  ])('%s: text large enough, apart and inside; ids, names and numbers in order', (_, given) => {
    keepsRules(exampleFigure('hitters', drawPooledRows(given)));
  });

  test('counts the golfers with a gap, and needs two', () => {
    const [first, second] = golferRowsOf(2).each;
    if (first === undefined || second === undefined) throw new Error('too few');
    const none = { ...first, estimate: null, interval: null };
    expect(
      drawn(exampleFigure('hitters', drawPooledRows(golferRowsOf(3, { each: [first, second, none] })))),
    ).toMatchObject({
      drawn: 2,
      recorded: 3,
      counted: 'golfers',
    });
    expect(exampleFigure('hitters', drawPooledRows(golferRowsOf(2, { each: [first, none] })))).toMatchObject({
      kind: 'absent',
      why: 'Fewer than two golfers hit both.',
    });
  });

  test('refuses numbers out of order, a negative gap that matters, a golfer not seen with an estimate', () => {
    const upside = exampleGap('Hitter 1', 3, 9, -3);
    expect(() => drawPooledRows(golferRowsOf(2, { each: [upside, upside] }))).toThrow('Hitter 1: 9, 3, -3');
    expect(() => drawPooledRows(golferRowsOf(2, { matters: -1 }))).toThrow('The gap that matters is -1');
    expect(() => drawPooledRows(golferRowsOf(2, { another: exampleGap('Another golfer', 3, 0, 6) }))).toThrow(
      'Another golfer: a golfer not yet seen',
    );
  });
});

describe('Where the yards come from', () => {
  const figure = drawn(exampleFigure('yards', drawYards(yardsExample)));

  test.each(variants)('%s is drawn as it was approved', (variant) => approved(figure, variant));

  test.each(variants)('%s: a ledger from what was measured down to what is not explained', (variant) => {
    const names = [
      'Carry, as measured',
      'Ball speed',
      'Launch angle',
      'Spin',
      'Direction',
      'Air',
      'Not explained',
    ];
    const found = placedTexts(figure.svg[variant])
      .filter(({ text }) => names.includes(text))
      .sort((one, other) => one.y - other.y);
    expect(found.map(({ text }) => text)).toEqual(names);
  });

  test('a part on which the sets disagree has its range, no ring and the words', () => {
    const { rings } = rowSigns(figure.svg.wide);
    expect(rings).toHaveLength(5);
    expect(words(figure.svg.wide).join(' ')).toContain('not settled: the two sets of');
  });

  test('a bar too short to be seen past its ring is drawn in it', () => {
    const short = drawn(
      exampleFigure(
        'yards',
        drawYards({ ...yardsExample, parts: [...yardsExample.parts, exampleGap('Loft', 8, 7.6, 8.4)] }),
      ),
    );
    const order = [...parseSvg(short.svg.wide).querySelectorAll('circle[r="7"], path')]
      .filter((one) => one.tagName.toLowerCase() === 'circle' || inherited(one, 'stroke-width') === '5')
      .map((one) => one.tagName.toLowerCase());
    expect(order.filter((tag) => tag === 'path').length).toBeGreaterThan(0);
    expect(order[order.indexOf('path') - 1]).toBe('circle');
  });

  test('counts the parts with a range; without one there is no chart but a reason', () => {
    expect(figure).toMatchObject({ drawn: 4, recorded: 5, counted: 'parts' });
    const parts = yardsExample.parts.filter(({ interval }) => interval === null);
    expect(exampleFigure('yards', drawYards({ ...yardsExample, parts }))).toMatchObject({
      kind: 'absent',
      why: 'Nothing of the flight was recorded that could account for the difference.',
    });
  });

  test.each([
    ['the example', yardsExample],
    ['long names', { ...yardsExample, ...long }],
    [
      'a part far larger than the gap',
      {
        ...yardsExample,
        parts: [exampleGap('Ball speed, by the two published sets of figures', 40, -300, 380)],
      },
    ],
  ])('%s: text large enough, apart and inside; ids, names and numbers in order', (_, given) => {
    keepsRules(exampleFigure('yards', drawYards(given)));
  });

  test('refuses broken numbers', () => {
    expect(() => drawYards({ ...yardsExample, rest: exampleGap('Not explained', Number.NaN, 0, 1) })).toThrow(
      'Not explained: 0, NaN, 1',
    );
  });
});

describe('With and without', () => {
  const figure = drawn(exampleFigure('with-and-without', drawWithAndWithout(withAndWithoutExample)));

  test.each(variants)('%s is drawn as it was approved', (variant) => approved(figure, variant));

  test.each(variants)('%s: two bars for every pair, on one scale', (variant) => {
    const { rings, thin } = rowSigns(figure.svg[variant]);
    expect([rings.length, thin.length]).toEqual([6, 6]);
    // Gaps of 7, 9 and 5, 7 yards.
    const yard = ((rings[1] ?? 0) - (rings[0] ?? 0)) / 2;
    expect(rings[2]).toBeCloseTo((rings[0] ?? 0) - 2 * yard, 0);
    expect(rings[3]).toBeCloseTo(rings[0] ?? 0, 0);
  });

  test.each([
    ['three heads', withAndWithoutExample],
    ['four heads, long names', withAndWithoutOf(pairedGaps(longNames.slice(0, 4)))],
    ['six heads', withAndWithoutOf(pairedGaps(heads))],
  ])('%s: text large enough, apart and inside; ids, names and numbers in order', (_, given) => {
    keepsRules(exampleFigure('with-and-without', drawWithAndWithout(given)));
  });

  test('beyond six pairs only those with the first contender are drawn, and the figure says so', () => {
    expect(
      drawn(exampleFigure('with-and-without', drawWithAndWithout(withAndWithoutOf(pairedGaps(heads))))),
    ).toMatchObject({
      drawn: 5,
      recorded: 15,
      counted: 'pairs',
    });
  });

  test('there is no chart but a reason where none was left out, or none could be judged', () => {
    expect(
      exampleFigure(
        'with-and-without',
        drawWithAndWithout(withAndWithoutOf(pairedGaps(heads), { leftOut: 0 })),
      ),
    ).toMatchObject({
      kind: 'absent',
      why: 'No shot was left out.',
    });
    const pairs = withAndWithoutExample.pairs.map((pair) => ({
      ...pair,
      kept: { ...pair.kept, estimate: null, interval: null },
    }));
    expect(exampleFigure('with-and-without', drawWithAndWithout(withAndWithoutOf(pairs)))).toMatchObject({
      kind: 'absent',
      why: 'No two of them had enough shots to be judged both ways.',
    });
  });
});
