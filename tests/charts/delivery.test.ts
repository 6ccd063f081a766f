import { describe, expect, test } from 'vitest';
import type { DrawnFigure } from '../../src/charts/figure.ts';
import { deliveryInputOf, deliveryRow, deliveryRows } from './examples/delivery.ts';
import { brokenRules, parseSvg, placedTexts } from './inspectSvg.ts';
import { deliveryDrawn, drawDelivery, type DeliveryInput } from '../../src/charts/deliveryDrawing.ts';
import { exampleFigure } from './examples/exampleFigure.ts';

const draw = (given: DeliveryInput): DrawnFigure => {
  const figure = exampleFigure('delivery', drawDelivery(given));
  if (figure.kind !== 'drawn') throw new Error(figure.why);
  return figure;
};

const ends = ['Wintergreen Extra Long Name', 'Sassafrasandbuttonwood Z'] as const;

/** Rows of six measures and three pairs; the later pair of a measure could be worth more. */
const many = ['Club speed', 'Path', 'Face', 'Angle of attack', 'Strike', 'Loft'].flatMap((measure) =>
  [1, 2, 3].map((size) =>
    deliveryRow(measure, [`pair ${size}`, ends[1]], [0, -3 * size, 2 * size], 'cannot-tell'),
  ),
);

describe('Delivery check', () => {
  const figure = draw(deliveryInputOf(deliveryRows));

  test.each(['wide', 'narrow'] as const)('%s is drawn as it was approved', async (variant) => {
    await expect(figure.svg[variant].replaceAll('><', '>\n<')).toMatchFileSnapshot(
      `golden/delivery-${variant}.svg`,
    );
  });

  test('a ring for every priced measure, words for all, and the margin as the band', () => {
    const root = parseSvg(figure.svg.narrow);
    expect(root.querySelectorAll('circle[r="7"]')).toHaveLength(3);
    const words = placedTexts(figure.svg.narrow)
      .map(({ text }) => text)
      .join(' ');
    for (const said of [
      'Club speed: Alder and Cedar cannot tell',
      'Angle of attack: Alder and Cedar same',
      'Path: Alder and Cedar different',
      'Strike height: no price.',
    ])
      expect(words).toContain(said);
    expect(words).toContain('the same swing: worth under 2.5 yards');
    expect(words).toContain('in favour of the first');
  });

  test('beyond eight rows each measure keeps the one that could be worth most', () => {
    const drawnNames = deliveryDrawn(many).map((row) => (row.kind === 'judged' ? row.name : ''));
    expect(drawnNames).toEqual(
      ['Club speed', 'Path', 'Face', 'Angle of attack', 'Strike', 'Loft'].map(
        (measure) => `${measure}: pair 3 and ${ends[1]}`,
      ),
    );
    const { drawn, recorded, counted } = draw(deliveryInputOf(many));
    expect({ drawn, recorded, counted }).toEqual({ drawn: 6, recorded: 18, counted: 'comparisons' });
    expect(deliveryDrawn(deliveryRows)).toEqual(deliveryRows);
  });

  const cases: readonly (readonly [string, DeliveryInput])[] = [
    ['four measures', deliveryInputOf(deliveryRows)],
    ['many rows', deliveryInputOf(many)],
    ['long names', deliveryInputOf([deliveryRow('Angle of attack', ends, [1, -3, 5], 'cannot-tell')])],
    [
      'an interval far wider than the band',
      deliveryInputOf([deliveryRow('Path', ends, [3, -90, 80], 'cannot-tell')]),
    ],
    ['all the same', deliveryInputOf([deliveryRow('Path', ends, [0, 0, 0], 'same')])],
  ];
  test.each(cases)('%s: text large enough, apart and inside; ids, names and numbers in order', (_, given) => {
    const { svg } = draw(given);
    expect(brokenRules(svg.wide)).toEqual([]);
    expect(brokenRules(svg.narrow)).toEqual([]);
  });

  test('without a priced measure there is no chart but a reason', () => {
    expect(exampleFigure('delivery', drawDelivery(deliveryInputOf(deliveryRows.slice(3))))).toMatchObject({
      kind: 'absent',
      why: 'Nothing of the swing was recorded that can be put into distance.',
    });
  });

  test.each([
    ['"same" where the interval leaves the margin', [0.5, -1, 2.6], 'same', 'is "cannot-tell", not "same"'],
    ['"different" where the interval holds 0', [4, -1, 9], 'different', 'is "cannot-tell", not "different"'],
    [
      '"different" where it is worth too little',
      [2, 0.5, 3.5],
      'different',
      'is "cannot-tell", not "different"',
    ],
    ['"cannot tell" where it can', [5, 1, 9], 'cannot-tell', 'is "different", not "cannot-tell"'],
    ['an interval upside down', [5, 9, 1], 'different', 'low 9, estimate 5 and high 1 must be numbers'],
  ] as const)('refuses %s', (_, numbers, answer, message) => {
    expect(() => drawDelivery(deliveryInputOf([deliveryRow('Path', ends, numbers, answer)]))).toThrow(
      message,
    );
  });

  test('refuses a margin of nothing and a table without all rows', () => {
    expect(() => drawDelivery(deliveryInputOf(deliveryRows, { margin: 0 }))).toThrow('The margin is 0');
    expect(() =>
      drawDelivery(deliveryInputOf(deliveryRows, { table: { caption: '', head: [], rows: [] } })),
    ).toThrow('The table has 0 rows for 4');
  });
});
