import { describe, expect, test } from 'vitest';
import { contenderMark } from '../../src/charts/contenderMarks.ts';
import type { DrawnFigure } from '../../src/charts/figure.ts';
import { truePlaces } from '../../src/charts/truePlaces.ts';
import { drawnMarks, sharesSeen } from './drawnMarks.ts';
import { heads, longNames } from './examples/heads.ts';
import { landingCrowd, landingExample, landingInputOf, landingPanelOf } from './examples/landing.ts';
import { brokenRules, inherited, parseSvg, placedTexts, translation } from './inspectSvg.ts';
import { drawLanding, type LandingInput } from '../../src/charts/landingDrawing.ts';
import { exampleFigure } from './examples/exampleFigure.ts';

import fc from 'fast-check';

const draw = (given: LandingInput): DrawnFigure => {
  const figure = exampleFigure('landing', drawLanding(given));
  if (figure.kind !== 'drawn') throw new Error(figure.why);
  return figure;
};

const words = (svg: string): string =>
  placedTexts(svg)
    .map(({ text }) => text)
    .join(' ');

/** Counted shots of the contender at `index`, without the mark beside its name. */
const shotsOf = (svg: string, index: number) => drawnMarks(svg, [index]).slice(1, -1);

/** Places along a path, px. */
const points = (path: Element): readonly (readonly [number, number])[] =>
  [...(path.getAttribute('d') ?? '').matchAll(/[ML](-?[\d.]+),(-?[\d.]+)/g)].map(([, x, y]) => [
    Number(x),
    Number(y),
  ]);

const strokes = (svg: string, stroke: string, width: string): readonly Element[] =>
  [...parseSvg(svg).querySelectorAll('path')].filter(
    (path) => inherited(path, 'stroke') === `var(--${stroke})` && inherited(path, 'stroke-width') === width,
  );

describe('Where they landed', () => {
  const figure = draw(landingExample);
  const variants = ['wide', 'narrow'] as const;

  test.each(variants)('%s is drawn as it was approved', async (variant) => {
    await expect(figure.svg[variant].replaceAll('><', '>\n<')).toMatchFileSnapshot(
      `golden/landing-${variant}.svg`,
    );
  });

  test.each(variants)('%s: every shot at its true place, a yard as long up the page as across', (variant) => {
    let yard: number | undefined;
    for (const [index, { shots }] of landingExample.panels.entries()) {
      const counted = shots.filter(({ leftOut }) => !leftOut);
      const drawn = shotsOf(figure.svg[variant], index);
      expect(drawn).toHaveLength(counted.length);
      const [first, second] = [counted[0], counted[4]];
      const [from, to] = [drawn[0], drawn[4]];
      if (!first || !second || !from || !to) throw new Error('too few shots');
      const here = (to.x - from.x) / (second.side - first.side);
      yard ??= here;
      expect(here).toBeCloseTo(yard, 1);
      for (const [place, { side, carry }] of counted.entries()) {
        expect(drawn[place]?.x).toBeCloseTo(from.x + (side - first.side) * yard, 0);
        expect(drawn[place]?.y).toBeCloseTo(from.y - (carry - first.carry) * yard, 0);
      }
    }
  });

  test('narrow panels stand below one another with their target lines in line', () => {
    const uprights = strokes(figure.svg.narrow, 'axis', '1')
      .concat([...parseSvg(figure.svg.narrow).querySelectorAll('g[stroke="var(--axis)"] path')])
      .map(points)
      .filter(([from, to]) => from !== undefined && to !== undefined && from[0] === to[0]);
    expect(uprights).toHaveLength(3);
    expect(new Set(uprights.map(([from]) => from?.[0])).size).toBe(1);
  });

  test('the curve is the ellipse it was given, in the line pattern of its contender', () => {
    const ellipses = [...parseSvg(figure.svg.wide).querySelectorAll('ellipse')];
    expect(ellipses).toHaveLength(landingExample.panels.length);
    for (const [index, { curve, shots }] of landingExample.panels.entries()) {
      const { colour, dashes } = contenderMark(index);
      const ellipse = ellipses[index];
      if (ellipse === undefined || curve === null) throw new Error('no curve');
      expect(ellipse.getAttribute('stroke')).toBe(`var(--${colour})`);
      expect(ellipse.getAttribute('stroke-dasharray') ?? '').toBe(dashes.join(' '));
      const counted = shots.filter(({ leftOut }) => !leftOut);
      const drawn = shotsOf(figure.svg.wide, index);
      const [a, b] = [counted[0], counted[4]];
      const [from, to] = [drawn[0], drawn[4]];
      if (!a || !b || !from || !to) throw new Error('too few shots');
      const yard = (to.x - from.x) / (b.side - a.side);
      const [x, y] = translation(ellipse);
      expect(x).toBeCloseTo(from.x + (curve.centre[0] - a.side) * yard, 0);
      expect(y).toBeCloseTo(from.y - (curve.centre[1] - a.carry) * yard, 0);
      expect(Number(ellipse.getAttribute('rx'))).toBeCloseTo(curve.halfAxes[0] * yard, 0);
      expect(Number(ellipse.getAttribute('ry'))).toBeCloseTo(curve.halfAxes[1] * yard, 0);
      // Downwards on the page is nearer to the golfer.
      const [, degrees] = /rotate\((-?[\d.]+)\)/.exec(ellipse.getAttribute('transform') ?? '') ?? [];
      expect(Number(degrees)).toBeCloseTo((-curve.angle * 180) / Math.PI, 1);
    }
  });

  test('the bracket spans the lane in which shots were counted', () => {
    const [, ...brackets] = strokes(figure.svg.wide, 'ink', '2').map(points);
    // The first stands in the key.
    expect(brackets).toHaveLength(3);
    const counted = landingExample.panels[0]?.shots ?? [];
    const drawn = shotsOf(figure.svg.wide, 0);
    const yard =
      ((drawn[4]?.x ?? 0) - (drawn[0]?.x ?? 0)) / ((counted[4]?.side ?? 0) - (counted[0]?.side ?? 0));
    const [bracket = []] = brackets;
    expect((bracket[2]?.[0] ?? 0) - (bracket[1]?.[0] ?? 0)).toBeCloseTo(30 * yard, 0);
    expect(words(figure.svg.wide)).toContain('8 of 12 within 15');
    expect(words(figure.svg.wide)).toContain('5 left');
    expect(words(figure.svg.wide)).toContain('7 right');
  });

  test('the counted shots of the others are grey dots, and the key says so', () => {
    const root = parseSvg(figure.svg.wide);
    const copies = [...root.querySelectorAll('use')];
    expect(copies).toHaveLength(3 * 2);
    // Copied over the panel of another contender they lie where that contender's own marks do.
    const yard = landingExample.panels.map((_, index) => shotsOf(figure.svg.wide, index));
    for (const copy of copies) {
      const path = root.querySelector(`[id="${copy.getAttribute('href')?.slice(1) ?? ''}"]`);
      const [dx, dy] = ['x', 'y'].map((name) => Number(copy.getAttribute(name)));
      const dots = points(path ?? copy).map(([x, y]) => [x + (dx ?? 0), y + (dy ?? 0)] as const);
      const own = yard.find(
        (shots) =>
          shots.length === dots.length &&
          shots.every((shot, at) => Math.abs(shot.y - (dots[at]?.[1] ?? 0)) < 0.2),
      );
      const apart = own?.map((shot, at) => (dots[at]?.[0] ?? 0) - shot.x) ?? [];
      expect(apart.length).toBeGreaterThan(10);
      expect(Math.max(...apart) - Math.min(...apart)).toBeLessThan(0.3);
      expect(Math.abs(apart[0] ?? 0)).toBeGreaterThan(100);
    }
    expect(new Set(copies.map((copy) => copy.getAttribute('href'))).size).toBe(3);
    expect(inherited(copies[0] ?? root, 'stroke')).toBe('var(--axis)');
    expect(words(figure.svg.wide)).toContain('the other two heads');
    const alone = draw(landingInputOf(landingExample.panels.slice(0, 1)));
    expect(words(alone.svg.wide)).not.toContain('the other two heads');
  });

  test('a shot left out is hollow with one stroke through, and the key says what that means', () => {
    const hollow = strokes(figure.svg.narrow, 'pine', '1.5');
    // One in the panel and one in the key.
    expect(hollow).toHaveLength(2);
    expect(words(figure.svg.narrow)).toContain('Hollow, struck through');
  });

  test('under ten shots there is no curve and no word of one', () => {
    const few = draw(landingCrowd(heads.slice(0, 2), 9));
    expect(words(few.svg.wide)).not.toContain('Curve');
    expect(strokes(few.svg.wide, 'umber', '2')).toEqual([]);
  });

  test('four panels stand two by two, six in two rows of three', () => {
    const tops = (count: number): readonly number[] =>
      placedTexts(draw(landingCrowd(heads.slice(0, count), 12)).svg.wide)
        .filter(({ text, weight }) => weight === 600 && heads.some((head) => head === text))
        .map(({ y }) => y);
    expect(new Set(tops(4)).size).toBe(2);
    expect(new Set(tops(6)).size).toBe(2);
    expect(new Set(tops(3)).size).toBe(1);
  });

  test.each(variants)('%s: a fifth of every shot at least is seen in a crowd', (variant) => {
    const { svg } = draw(landingCrowd(heads, 40));
    for (const index of heads.keys()) {
      const seen = sharesSeen(shotsOf(svg[variant], index));
      expect(seen).toHaveLength(39);
      expect(Math.min(...seen)).toBeGreaterThan(0.2);
    }
  });

  const cases: readonly (readonly [string, LandingInput])[] = [
    ['three heads', landingExample],
    ['six heads', landingCrowd(heads, 24)],
    ['long names', landingCrowd(longNames, 12)],
    ['one head, a hundred shots', landingCrowd(['Alder'], 100)],
    ['very wild shots', landingCrowd(heads.slice(0, 2), 12, { side: 90, carry: 60 })],
    ['shots nearly all alike', landingCrowd(heads.slice(0, 3), 12, { side: 0.2, carry: 0.1 })],
    ['one shot', landingInputOf([landingPanelOf(0, 'Alder', [[3, 210]])])],
    [
      'an empty panel beside a full one',
      landingInputOf([
        ...landingExample.panels.slice(0, 1),
        { ...landingPanelOf(1, 'Birch', [[0, 0]]), shots: [], average: null, numbers: 'no reading' },
      ]),
    ],
    [
      'long counts',
      landingInputOf(
        landingExample.panels.map((panel) => ({
          ...panel,
          numbers: 'average 237.4 metres, 104.2 metres to the right of the target line',
          feet: { left: '118 to the left', within: '118 of 236 within 15 metres', right: '118 to the right' },
        })),
      ),
    ],
  ];
  test.each(cases)('%s: text large enough, apart and inside; ids, names and numbers in order', (_, given) => {
    const { svg } = draw(given);
    expect(brokenRules(svg.wide)).toEqual([]);
    expect(brokenRules(svg.narrow)).toEqual([]);
  });

  test('counts the shots drawn of those recorded', () => {
    const { drawn, recorded, counted } = draw({ ...landingExample, recorded: 40 });
    expect({ drawn, recorded, counted }).toEqual({ drawn: 36, recorded: 40, counted: 'shots' });
  });

  test('without shots there is no chart but a reason', () => {
    expect(exampleFigure('landing', drawLanding(landingInputOf([])))).toMatchObject({
      kind: 'absent',
      why: 'No shot has both a carry and a distance from the line.',
    });
  });

  test('refuses broken values, a lane without width, a seventh contender and more shots than recorded', () => {
    expect(() => drawLanding(landingInputOf([landingPanelOf(0, 'Alder', [[Number.NaN, 210]])]))).toThrow(
      'Alder has the value NaN',
    );
    expect(() => drawLanding({ ...landingExample, within: 0 })).toThrow('The lane is 0 to either side');
    expect(() => drawLanding(landingInputOf([landingPanelOf(6, 'Gorse', [[1, 210]])]))).toThrow(
      'not for number 7',
    );
    expect(() => drawLanding({ ...landingExample, recorded: 3 })).toThrow('36 shots to draw but only 3');
  });
});

describe('marks at their true places', () => {
  const mark = contenderMark(0);

  test('keep the usual size where they do not meet', () => {
    const apart = [0, 20, 40].map((x) => ({ x, y: 0, mark }));
    expect(truePlaces([apart])[0]?.map(({ radius }) => radius)).toEqual([4.5, 4.5, 4.5]);
  });

  test('one on the very place of another is drawn smaller, so that the other shows round it', () => {
    const pair = [...Array.from({ length: 8 }, (_, place) => place * 20), 0].map((x) => ({ x, y: 0, mark }));
    const sizes = truePlaces([pair])[0]?.map(({ radius }) => radius) ?? [];
    expect(sizes.slice(0, 8)).toEqual(Array.from({ length: 8 }, () => 4.5));
    expect(sizes[8]).toBeLessThan(3.5);
    expect(sizes[8]).toBeGreaterThan(1);
  });

  test.each(heads.map((_, index) => index))(
    'contender %d: two may share a place among others and all are seen',
    (index) => {
      const place = fc.record({ x: fc.integer({ min: 0, max: 60 }), y: fc.integer({ min: 0, max: 60 }) });
      fc.assert(
        fc.property(
          fc.uniqueArray(place, { maxLength: 12, selector: ({ x, y }) => `${x} ${y}` }),
          (places) => {
            const [first] = places;
            const spots = [...places, ...(first === undefined ? [] : [first])];
            const [sized = []] = truePlaces([spots.map((spot) => ({ ...spot, mark: contenderMark(index) }))]);
            const seen = sharesSeen(sized.map(({ x, y, radius }) => ({ index, x, y, radius })));
            for (const share of seen) expect(share).toBeGreaterThan(0.1);
          },
        ),
        { numRuns: 25 },
      );
    },
  );
});
