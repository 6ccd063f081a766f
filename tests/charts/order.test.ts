import { describe, expect, test } from 'vitest';
import type { DrawnFigure } from '../../src/charts/figure.ts';
import { drawnMarks, sharesSeen } from './drawnMarks.ts';
import { heads, longNames } from './examples/heads.ts';
import { orderExample, orderInputOf } from './examples/order.ts';
import { brokenRules, inherited, parseSvg, placedTexts } from './inspectSvg.ts';
import { drawOrder, type OrderInput } from '../../src/charts/orderDrawing.ts';
import { exampleFigure } from './examples/exampleFigure.ts';

const draw = (given: OrderInput): DrawnFigure => {
  const figure = exampleFigure('order', drawOrder(given));
  if (figure.kind !== 'drawn') throw new Error(figure.why);
  return figure;
};

const words = (svg: string): string =>
  placedTexts(svg)
    .map(({ text }) => text)
    .join(' ');

describe('Shots in order', () => {
  const figure = draw(orderExample);
  const variants = ['wide', 'narrow'] as const;

  test.each(variants)('%s is drawn as it was approved', async (variant) => {
    await expect(figure.svg[variant].replaceAll('><', '>\n<')).toMatchFileSnapshot(
      `golden/order-${variant}.svg`,
    );
  });

  test.each(variants)('%s: every counted shot at its number and its value', (variant) => {
    for (const index of [0, 1, 2]) {
      const counted = orderExample.shots.filter(({ contender, leftOut }) => contender === index && !leftOut);
      // Names come before the shots.
      const drawn = drawnMarks(figure.svg[variant], [index]).slice(1);
      expect(drawn).toHaveLength(counted.length);
      const [first, last] = [counted[0], counted.at(-1)];
      const [from, to] = [drawn[0], drawn.at(-1)];
      if (!first || !last || !from || !to) throw new Error('too few shots');
      const across = (to.x - from.x) / (last.number - first.number);
      const up = (to.y - from.y) / (last.value - first.value);
      expect(up).toBeLessThan(0);
      for (const [place, { number, value }] of counted.entries()) {
        expect(drawn[place]?.x).toBeCloseTo(from.x + (number - first.number) * across, 0);
        expect(Math.abs((drawn[place]?.y ?? 0) - from.y - (value - first.value) * up)).toBeLessThan(0.6);
      }
    }
  });

  /** Lines of a contender's colour and the values at their ends, those of the key left out. */
  const trendsIn = (svg: string) => {
    const yard = (210 - 250) / (heightOfTick('210') - heightOfTick('250'));
    const valueAt = (y: number): number => 210 + (y - heightOfTick('210')) * yard;
    return ['umber', 'bluebell', 'pine'].map((colour) =>
      [...parseSvg(svg).querySelectorAll('path')]
        .filter(
          (path) =>
            inherited(path, 'stroke') === `var(--${colour})` && inherited(path, 'stroke-width') === '2',
        )
        .map((path) => [...(path.getAttribute('d') ?? '').matchAll(/-?[\d.]+/g)].map(Number))
        .filter((d) => d[1] !== d[3])
        .map(([x1 = 0, y1 = 0, x2 = 0, y2 = 0]) => ({ x1, x2, from: valueAt(y1), to: valueAt(y2) })),
    );
  };

  test('each contender has a trend in its own line, through its two ends, from its own first shot to its last', () => {
    for (const [contender, found] of trendsIn(figure.svg.wide).entries()) {
      const given = orderExample.trends[contender];
      const own = drawnMarks(figure.svg.wide, [contender]).slice(1);
      expect(found).toHaveLength(1);
      expect(Math.abs((found[0]?.from ?? 0) - (given?.from.value ?? NaN))).toBeLessThan(0.3);
      expect(Math.abs((found[0]?.to ?? 0) - (given?.to.value ?? NaN))).toBeLessThan(0.3);
      expect(found[0]?.x1).toBeCloseTo(Math.min(...own.map(({ x }) => x)), 0);
      expect(found[0]?.x2).toBeCloseTo(Math.max(...own.map(({ x }) => x)), 0);
    }
    for (const { words: told } of orderExample.trends) expect(words(figure.svg.wide)).toContain(told);
  });

  const heightOfTick = (text: string): number =>
    (placedTexts(figure.svg.wide).find((one) => one.text === text)?.y ?? Number.NaN) - 4.5;

  test('without a trend there is no line and no word of one', () => {
    const { svg } = draw({ ...orderExample, trends: [] });
    expect(trendsIn(svg.wide).flat()).toEqual([]);
    expect(words(svg.wide)).not.toContain('in ten shots');
  });

  test.each(variants)('%s: a fifth of every shot at least is seen in a long session', (variant) => {
    const { svg } = draw(orderInputOf(heads, 150));
    const drawn = drawnMarks(svg[variant], [0, 1, 2, 3, 4, 5]).slice(6);
    expect(drawn.length).toBe(orderInputOf(heads, 150).shots.filter(({ leftOut }) => !leftOut).length);
    expect(Math.min(...sharesSeen(drawn))).toBeGreaterThan(0.2);
  });

  const cases: readonly (readonly [string, OrderInput])[] = [
    ['three heads', orderExample],
    ['six heads, long names', orderInputOf(longNames, 120)],
    ['one shot', orderInputOf(['Alder'], 1, { trends: [] })],
    [
      'values all alike',
      orderInputOf(['Alder'], 12, {
        shots: Array.from({ length: 12 }, (_, place) => ({
          number: place + 1,
          value: 1.45,
          contender: 0,
          leftOut: false,
        })),
        trends: [],
        axis: 'Smash factor',
      }),
    ],
    [
      'spin in thousands, a trend that might be anything',
      orderInputOf(['Alder', 'Birch'], 24, {
        shots: orderInputOf(['Alder', 'Birch'], 24).shots.map((shot) => ({
          ...shot,
          value: shot.value * 11,
        })),
        trends: [
          {
            contender: 0,
            from: { number: 1, value: -4000 },
            to: { number: 23, value: 9000 },
            words: 'Alder: no clear trend in spin, give or take 9,000 rpm in ten shots',
          },
        ],
        axis: 'Spin in turns a minute',
      }),
    ],
  ];
  test.each(cases)('%s: text large enough, apart and inside; ids, names and numbers in order', (_, given) => {
    const { svg } = draw(given);
    expect(brokenRules(svg.wide)).toEqual([]);
    expect(brokenRules(svg.narrow)).toEqual([]);
  });

  test('counts the shots drawn of those recorded', () => {
    const { drawn, recorded, counted } = draw({ ...orderExample, recorded: 40 });
    expect({ drawn, recorded, counted }).toEqual({ drawn: 36, recorded: 40, counted: 'shots' });
  });

  test('without shots there is no chart but a reason', () => {
    expect(exampleFigure('order', drawOrder({ ...orderExample, shots: [] }))).toMatchObject({
      kind: 'absent',
      why: 'No shot has a reading to draw.',
    });
  });

  test.each([
    [
      'a shot of nobody',
      { shots: [{ number: 1, value: 2, contender: 5, leftOut: false }] },
      'Shot 1 is of contender number 6',
    ],
    [
      'a broken value',
      { shots: [{ number: 1, value: Number.NaN, contender: 0, leftOut: false }] },
      'Shot 1 has the value NaN',
    ],
    [
      'a shot before the first',
      { shots: [{ number: 0, value: 2, contender: 0, leftOut: false }] },
      'Shot 0 has the value 2',
    ],
    ['a seventh contender', { contenders: [{ label: 'Gorse', index: 6 }] }, 'not for number 7'],
    ['more shots than recorded', { recorded: 3 }, '36 shots to draw but only 3 recorded.'],
    [
      'a trend out of order',
      {
        trends: [
          { contender: 0, from: { number: 36, value: 230 }, to: { number: 1, value: 220 }, words: '' },
        ],
      },
      'The trend from 230 at shot 36 to 220 at shot 1 cannot be drawn.',
    ],
  ])('refuses %s', (_, change, message) => {
    expect(() => drawOrder({ ...orderExample, ...change })).toThrow(message);
  });
});
