import { describe, expect, test } from 'vitest';
import { contenderMark } from '../../src/charts/contenderMarks.ts';
import type { DrawnFigure } from '../../src/charts/figure.ts';
import { drawnMarks } from './drawnMarks.ts';
import { brokenRules, inherited, parseSvg, placedTexts, translation } from './inspectSvg.ts';
import { exampleWords } from './examples/heads.ts';
import { distanceBetween, outline } from './outlines.ts';
import { drawShots, type ShotsInput } from '../../src/charts/shotsDrawing.ts';
import type { ShotsStrip } from '../../src/charts/shotsStrip.ts';
import { exampleFigure } from './examples/exampleFigure.ts';

/** Invented values, crowded about `centre` like shots are: quantiles of a logistic distribution of that standard deviation, to a tenth. */
const invented = (count: number, centre: number, deviation: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => {
    const share = (i + 0.5) / count;
    return (
      Math.round(10 * (centre + ((deviation * Math.sqrt(3)) / Math.PI) * Math.log(share / (1 - share)))) / 10
    );
  });

const strip = (
  index: number,
  values: readonly number[],
  label: string,
  leftOut: readonly number[] = [],
): ShotsStrip => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return {
    contender: { label, index },
    shots: values.map((value, place) => ({ value, leftOut: leftOut.includes(place) })),
    numbers: `${values.length} shots, average ${mean.toFixed(0)}`,
    average: { value: mean, text: mean.toFixed(0), interval: { low: mean - 4, high: mean + 4 } },
  };
};

const input = (strips: readonly ShotsStrip[], rest: Partial<ShotsInput> = {}): ShotsInput => ({
  ...exampleWords(
    'Carry of three driver heads',
    strips.map(({ contender }) => contender.label),
  ),
  strips,
  key: { shot: 'one shot', ring: 'average', bar: 'likely range of the average' },
  roundIn: 1,
  axis: 'Carry in yards',
  leftOut: 'Hollow, struck through: left out of the averages',
  recorded: strips.reduce((sum, { shots }) => sum + shots.length, 0),
  ...rest,
});

const draw = (given: ShotsInput): DrawnFigure => {
  const figure = exampleFigure('shots', drawShots(given));
  if (figure.kind !== 'drawn') throw new Error(figure.why);
  return figure;
};

const three = [
  strip(0, [231, 238.5, 236, 244, 240.2, 225.4], 'Alder', [5]),
  strip(1, [222, 228, 228.4, 235.1, 219, 241], 'Birch'),
  strip(2, [211.3, 225, 226, 226.2, 235, 224.7], 'Cedar'),
];

/** A counted shot's mark as drawn, px. */
interface DrawnShot {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** The counted shots of the contender at `index`: all its marks but those in the key and beside the name. */
const shotsOf = (svg: string, index: number): readonly DrawnShot[] => {
  const mark = contenderMark(index);
  const unit = Math.max(...mark.corners.map(([x]) => x));
  return [...parseSvg(svg).querySelectorAll('circle, path')]
    .filter((element) => inherited(element, 'fill') === `var(--${mark.colour})`)
    .slice(2)
    .map((element) => {
      if (element.tagName.toLowerCase() === 'circle') {
        const [x, y, radius] = ['cx', 'cy', 'r'].map((name) => Number(element.getAttribute(name)));
        return { x: x ?? 0, y: y ?? 0, radius: radius ?? 0 };
      }
      const [x, y] = translation(element);
      const across = [...(element.getAttribute('d') ?? '').matchAll(/[ML](-?[\d.]+),/g)].map(([, at]) =>
        Number(at),
      );
      return { x, y, radius: Math.max(...across) / unit };
    });
};

const names = ['Northern Pintail', 'Hollow Oak Forged Mk II', 'C', 'Dogwood', 'Elm', 'Fir'];
const many = (contenders: number, count: number, deviation = 8): ShotsInput =>
  input(
    names
      .slice(0, contenders)
      .map((label, index) => strip(index, invented(count, 225 + 3 * index, deviation), label, [2])),
  );

describe('All the shots', () => {
  const figure = draw(input(three));

  test.each(['wide', 'narrow'] as const)('%s is drawn as it was approved', async (variant) => {
    await expect(figure.svg[variant].replaceAll('><', '>\n<')).toMatchFileSnapshot(
      `golden/shots-${variant}.svg`,
    );
  });

  test('every shot has its mark, at its place on one scale', () => {
    const values = [222, 228, 228.4, 235.1, 219, 241];
    const places = shotsOf(figure.svg.wide, 1).map(({ x }) => x);
    expect(places).toHaveLength(values.length);
    const yard = ((places[5] ?? 0) - (places[4] ?? 0)) / (241 - 219);
    for (const [index, value] of values.entries()) {
      expect(places[index]).toBeCloseTo((places[4] ?? 0) + (value - 219) * yard, 0);
    }
    // Another contender's first shot, 231 yards, lies on the same scale.
    expect(shotsOf(figure.svg.wide, 0)[0]?.x).toBeCloseTo((places[4] ?? 0) + (231 - 219) * yard, 0);
  });

  test('a shot left out is hollow with one stroke through, and the key says what that means', () => {
    const hollow = [...parseSvg(figure.svg.wide).querySelectorAll('circle')].filter(
      (mark) =>
        inherited(mark, 'fill') === 'var(--paper)' &&
        inherited(mark, 'stroke') === 'var(--umber)' &&
        inherited(mark, 'stroke-width') === '1.5',
    );
    // One in the strip and one in the key.
    expect(hollow).toHaveLength(2);
    expect(placedTexts(figure.svg.wide).map(({ text }) => text)).toContain(
      'Hollow, struck through: left out of the averages',
    );
    expect(
      placedTexts(draw(input(three.slice(1))).svg.wide)
        .map(({ text }) => text)
        .join(),
    ).not.toContain('Hollow');
  });

  test.each([0, 1, 2, 3, 4, 5])(
    'no shot of contender %d is covered by another, in either variant',
    (index) => {
      const { svg } = draw(many(6, 40));
      for (const variant of ['wide', 'narrow'] as const) {
        const outlines = shotsOf(svg[variant], index).map(({ x, y, radius }) =>
          outline(contenderMark(index), x, y, radius),
        );
        expect(outlines).toHaveLength(39);
        for (const [i, one] of outlines.entries()) {
          for (const other of outlines.slice(i + 1)) expect(distanceBetween(one, other)).toBeGreaterThan(0.5);
        }
      }
    },
  );

  test('shots all of one value are stacked, not covered', () => {
    const places = shotsOf(
      draw(
        input([
          strip(
            0,
            Array.from({ length: 6 }, () => 230),
            'Alder',
          ),
        ]),
      ).svg.narrow,
      0,
    );
    expect(new Set(places.map(({ x }) => x)).size).toBe(1);
    expect(new Set(places.map(({ y }) => y)).size).toBe(6);
  });

  test('two hundred shots a head make strips of half a phone screen at most', () => {
    const height = Number(parseSvg(draw(many(2, 200)).svg.narrow).getAttribute('height'));
    expect(height).toBeLessThan(640);
  });

  test('the scale says where it runs when it does not reach nought, and nothing when it does', () => {
    const words = (given: ShotsInput): string =>
      placedTexts(draw(given).svg.wide)
        .map(({ text }) => text)
        .join('\n');
    expect(words(input(three))).toContain('Carry in yards; scale from 210 to 245');
    const sides = input([strip(0, [-12, 3, 8, -4], 'Alder')], { axis: 'Yards left and right of the line' });
    expect(words(sides)).toContain('Yards left and right of the line');
    expect(words(sides)).not.toContain('the scale runs');
  });

  test('in metres every mark stands where it does in yards, between the same ends, with round steps of its own', () => {
    const metre = 0.9144;
    const inMetres = three.map(({ contender, shots, numbers, average }) => ({
      contender,
      shots: shots.map(({ value, leftOut }) => ({ value: value * metre, leftOut })),
      numbers,
      average:
        average === null || average.interval === null
          ? average
          : {
              ...average,
              value: average.value * metre,
              interval: { low: average.interval.low * metre, high: average.interval.high * metre },
            },
    }));
    const yards = draw(input(three)).svg.wide;
    const metres = draw(input(inMetres, { axis: 'Carry in metres', roundIn: metre })).svg.wide;
    expect(drawnMarks(metres, [0, 1, 2])).toEqual(drawnMarks(yards, [0, 1, 2]));
    const words = placedTexts(metres).map(({ text }) => text);
    expect(words).toContain('Carry in metres; scale from 192 to 224');
    expect(words).toEqual(expect.arrayContaining(['195', '200', '205', '210', '215', '220']));
    expect(words).not.toContain('192');
  });

  const cases: readonly (readonly [string, ShotsInput])[] = [
    ['three heads', input(three)],
    [
      'two heads, four shots',
      input([strip(0, [221, 224, 226, 219], 'Alder'), strip(1, [230, 222, 225, 231], 'Birch')]),
    ],
    ['six heads', many(6, 24)],
    ['a hundred shots', many(2, 100)],
    ['one shot, no average', input([{ ...strip(0, [231], 'Alder'), average: null }])],
    [
      'an average without interval',
      input([{ ...strip(0, [231, 233], 'Alder'), average: { value: 232, text: '232', interval: null } }]),
    ],
    [
      'smash factors',
      input(
        [strip(0, [1.44, 1.47, 1.49], 'Alder')].map((one) => ({ ...one, average: null })),
        { axis: 'Smash factor' },
      ),
    ],
  ];
  test.each(cases)('%s: text large enough, apart and inside; ids, names and numbers in order', (_, given) => {
    const { svg } = draw(given);
    expect(brokenRules(svg.wide)).toEqual([]);
    expect(brokenRules(svg.narrow)).toEqual([]);
  });

  test('counts the shots drawn of those recorded', () => {
    const { drawn, recorded, counted } = draw(input(three, { recorded: 20 }));
    expect({ drawn, recorded, counted }).toEqual({ drawn: 18, recorded: 20, counted: 'shots' });
  });

  test('without shots there is no chart but a reason', () => {
    expect(exampleFigure('shots', drawShots(input([])))).toMatchObject({
      kind: 'absent',
      why: 'No shot has a reading to draw.',
    });
  });

  test('refuses values that are not numbers, and more shots than were recorded', () => {
    expect(() => drawShots(input([strip(0, [231, Number.NaN], 'Alder')]))).toThrow('Alder has the value NaN');
    expect(() => drawShots(input(three, { recorded: 3 }))).toThrow('18 shots to draw but only 3 recorded.');
  });
});
