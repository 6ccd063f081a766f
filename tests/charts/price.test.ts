import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { DrawnFigure } from '../../src/charts/figure.ts';
import { priceChart } from '../../src/charts/price.ts';
import type { PriceInput } from '../../src/charts/priceInput.ts';
import { sideBySide } from '../../src/charts/priceVariant.ts';
import { priceExample, pricedGap, priceInputOf } from './examples/price.ts';
import { brokenRules, inherited, parseSvg, placedTexts } from './inspectSvg.ts';

const draw = (given: PriceInput): DrawnFigure => {
  const figure = priceChart(given);
  if (figure.kind !== 'drawn') throw new Error(figure.why);
  return figure;
};

const middle = (svg: string, text: string): { readonly x: number; readonly y: number } => {
  const found = placedTexts(svg).find((one) => one.text === text);
  if (found === undefined) throw new Error(`no ${text}`);
  return { x: (found.left + found.right) / 2, y: found.y - 4.5 };
};

const rings = (svg: string) =>
  [...parseSvg(svg).querySelectorAll('circle[r="7"]')].map((circle) => ({
    x: Number(circle.getAttribute('cx')),
    y: Number(circle.getAttribute('cy')),
  }));

/** Upright bars of a stroke width in ink, px. */
const bars = (svg: string, width: string) =>
  [...parseSvg(svg).querySelectorAll('path')]
    .filter((path) => inherited(path, 'stroke') === 'var(--ink)' && inherited(path, 'stroke-width') === width)
    .map((path) => [...(path.getAttribute('d') ?? '').matchAll(/-?[\d.]+/g)].map(Number));

describe('Price and yards', () => {
  const figure = draw(priceExample);
  const variants = ['wide', 'narrow'] as const;

  test.each(variants)('%s is drawn as it was approved', async (variant) => {
    await expect(figure.svg[variant].replaceAll('><', '>\n<')).toMatchFileSnapshot(
      `golden/price-${variant}.svg`,
    );
  });

  test.each(variants)(
    '%s: each ring over its price at its gap, its bar as long as its interval',
    (variant) => {
      const svg = figure.svg[variant];
      const [zero, hundred] = [middle(svg, '100'), middle(svg, '200')];
      const [ten, twenty] = [middle(svg, '10'), middle(svg, '20')];
      const pound = (hundred.x - zero.x) / 100;
      const yard = (twenty.y - ten.y) / 10;
      expect(yard).toBeLessThan(0);
      // In rising order of price: Birch 150 dearer by 8 yards, Alder 230 by 12.
      const [birch, alder] = rings(svg);
      expect(birch?.x).toBeCloseTo(zero.x + 50 * pound, 0);
      expect(alder?.x).toBeCloseTo(zero.x + 130 * pound, 0);
      expect(birch?.y).toBeCloseTo(ten.y - 2 * yard, 0);
      expect(alder?.y).toBeCloseTo(ten.y + 2 * yard, 0);
      const [low = []] = bars(svg, '2.5');
      expect(low[1]).toBeCloseTo(ten.y - 8 * yard, 0);
      expect(low[3]).toBeCloseTo(ten.y + 4 * yard, 0);
      // Thick from 5 yards up.
      expect(bars(svg, '9')[0]?.[1]).toBeCloseTo(ten.y - 5 * yard, 0);
    },
  );

  test('numbers on the bars are those of the list, in rising order of price', () => {
    const words = placedTexts(figure.svg.narrow).map(({ text }) => text);
    expect(words.indexOf('Birch over Cedar')).toBeLessThan(words.indexOf('Alder over Cedar'));
    expect(words.filter((text) => text === '1')).toHaveLength(2);
    expect(words.filter((text) => text === '2')).toHaveLength(2);
  });

  test('bars of nearly one price stand side by side, in order and inside', () => {
    expect(sideBySide([10, 100, 101, 102], 400)).toEqual([10, 100, 120, 140]);
    expect(sideBySide([380, 399, 400], 400)).toEqual([360, 380, 400]);
    fc.assert(
      fc.property(fc.array(fc.double({ min: 40, max: 280, noNaN: true }), { maxLength: 10 }), (places) => {
        const wanted = places.toSorted((one, other) => one - other);
        const placed = sideBySide(wanted, 280);
        for (const [index, place] of placed.entries()) {
          expect(place).toBeLessThanOrEqual(280);
          expect(place - (placed[index - 1] ?? -Infinity)).toBeGreaterThan(19.999);
        }
      }),
    );
  });

  const six = Array.from({ length: 6 }, (_, index) =>
    pricedGap(`Alder over Wintergreen Extra Long Name, number ${index}`, 100 + index, [
      12 + index,
      7,
      18 + index,
    ]),
  );
  const cases: readonly (readonly [string, PriceInput])[] = [
    ['two pairs', priceExample],
    ['six pairs of nearly one price, long names', priceInputOf(six)],
    ['one pair of one price', priceInputOf([pricedGap('Alder over Birch', 0, [6, 1, 9])])],
    [
      'the dearer one shorter',
      priceInputOf([pricedGap('Alder over Birch', 40, [-8, -14, -2]), pricedGap('C', 90, [8, 7, 9])]),
    ],
    [
      'a small gap, clear inside the band',
      priceInputOf([pricedGap('A', 40, [2, 1, 3]), pricedGap('B', 50, [-2, -3, -1])]),
    ],
    ['no band', priceInputOf(six, { matters: 0 })],
    [
      'large numbers',
      priceInputOf([pricedGap('Alder over Birch', 12_000, [1400, 200, 2600])], { matters: 300 }),
    ],
  ];
  test.each(cases)('%s: text large enough, apart and inside; ids, names and numbers in order', (_, given) => {
    const { svg } = draw(given);
    expect(brokenRules(svg.wide)).toEqual([]);
    expect(brokenRules(svg.narrow)).toEqual([]);
  });

  test('no number stands on the band', () => {
    const [, given] = cases[4] ?? [];
    if (given === undefined) throw new Error('no case');
    const { wide } = draw(given).svg;
    const edges = [...parseSvg(wide).querySelectorAll('path')]
      .filter((path) => inherited(path, 'stroke') === 'var(--band-edge)')
      .map((path) => Number(/,(-?[\d.]+)/.exec(path.getAttribute('d') ?? '')?.[1]));
    const numbers = placedTexts(wide).filter(
      ({ text, weight, left }) => /^[12]$/.test(text) && weight === 600 && left > 30,
    );
    expect([edges.length, numbers.length]).toEqual([2, 2]);
    for (const { y } of numbers) expect(y < Math.min(...edges) || y - 11 > Math.max(...edges)).toBe(true);
  });

  test('without a clear gap there is no chart but a reason', () => {
    expect(priceChart(priceInputOf([]))).toMatchObject({
      kind: 'absent',
      why: 'No dearer one was clearly ahead.',
    });
    expect(figure).toMatchObject({ drawn: 2, recorded: 2, counted: 'pairs' });
  });

  test.each([
    [
      'a negative difference of price',
      [pricedGap('A over B', -5, [8, 2, 14])],
      'A over B: the dearer one comes first',
    ],
    ['a gap that is not clear', [pricedGap('A over B', 5, [8, -2, 14])], 'A over B: -2 to 14 holds 0'],
    ['numbers out of order', [pricedGap('A over B', 5, [8, 14, 2])], 'low 14, estimate 8 and high 2'],
    ['a broken number', [pricedGap('A over B', 5, [Number.NaN, 2, 14])], 'estimate NaN'],
  ])('refuses %s', (_, pairs, message) => {
    expect(() => priceChart(priceInputOf(pairs))).toThrow(message);
  });

  test('refuses a negative gap that matters', () => {
    expect(() => priceChart({ ...priceExample, matters: -1 })).toThrow('The gap that matters is -1');
  });
});
