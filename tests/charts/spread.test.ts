import { describe, expect, test } from 'vitest';
import type { DrawnFigure } from '../../src/charts/figure.ts';
import { longNames } from './examples/heads.ts';
import { spreadExample, spreadInputOf } from './examples/spread.ts';
import { brokenRules, placedTexts } from './inspectSvg.ts';
import { rowSigns } from './rowSigns.ts';
import { drawSpread, type SpreadInput, type SpreadRow } from '../../src/charts/spread.ts';
import { exampleFigure } from './examples/exampleFigure.ts';

const draw = (given: SpreadInput): DrawnFigure => {
  const figure = exampleFigure('spread', drawSpread(given));
  if (figure.kind !== 'drawn') throw new Error(figure.why);
  return figure;
};

const only = (row: Partial<SpreadRow>): SpreadInput =>
  spreadInputOf(['Alder'], {
    groups: [
      {
        heading: 'Carry',
        rows: [
          {
            contender: { label: 'Alder', index: 0 },
            spread: 6,
            interval: { low: 4, high: 11 },
            figure: '6',
            words: 'likely 4 to 11',
            ...row,
          },
        ],
      },
    ],
  });

describe('Spread', () => {
  const figure = draw(spreadExample);
  const variants = ['wide', 'narrow'] as const;

  test.each(variants)('%s is drawn as it was approved', async (variant) => {
    await expect(figure.svg[variant].replaceAll('><', '>\n<')).toMatchFileSnapshot(
      `golden/spread-${variant}.svg`,
    );
  });

  test.each(variants)('%s: carry and side on one scale from nought', (variant) => {
    const { rings, thin } = rowSigns(figure.svg[variant]);
    const spreads = [6, 8, 10, 10, 12, 14];
    expect(rings).toHaveLength(6);
    const yard = ((rings[5] ?? 0) - (rings[0] ?? 0)) / (14 - 6);
    const zero = (rings[0] ?? 0) - 6 * yard;
    for (const [index, spread] of spreads.entries()) {
      expect(rings[index]).toBeCloseTo(zero + spread * yard, 0);
      expect(Math.max(...(thin[index] ?? []))).toBeCloseTo(zero + 1.8 * spread * yard, 0);
    }
    const nought = placedTexts(figure.svg[variant]).find(({ text }) => text === '0');
    expect(((nought?.left ?? 0) + (nought?.right ?? 0)) / 2).toBeCloseTo(zero, 0);
  });

  test('under eight shots there are words and a ring but no bar', () => {
    const { rings, thin } = rowSigns(
      draw(only({ interval: null, words: 'five shots cannot say' })).svg.narrow,
    );
    expect([rings.length, thin.length]).toEqual([1, 0]);
  });

  const cases: readonly (readonly [string, SpreadInput])[] = [
    ['three heads', spreadExample],
    ['six heads, long names', spreadInputOf(longNames)],
    ['no interval', only({ interval: null, words: 'five shots cannot say how much wider it might be' })],
    ['no scatter at all', only({ spread: 0, interval: { low: 0, high: 0 }, figure: '0' })],
    ['spin', only({ spread: 420, interval: { low: 290, high: 3800 }, figure: '420', words: '290 to 3,800' })],
  ];
  test.each(cases)('%s: text large enough, apart and inside; ids, names and numbers in order', (_, given) => {
    const { svg } = draw(given);
    expect(brokenRules(svg.wide)).toEqual([]);
    expect(brokenRules(svg.narrow)).toEqual([]);
  });

  test('counts the spreads drawn of those asked for', () => {
    const [carry] = spreadExample.groups;
    if (carry === undefined) throw new Error('no group');
    const rows = carry.rows.map((row, index) =>
      index === 0 ? { ...row, spread: null, interval: null } : row,
    );
    const { drawn, recorded, counted } = draw({ ...spreadExample, groups: [{ ...carry, rows }] });
    expect({ drawn, recorded, counted }).toEqual({ drawn: 2, recorded: 3, counted: 'spreads' });
  });

  test('without a spread there is no chart but a reason', () => {
    expect(exampleFigure('spread', drawSpread(only({ spread: null, interval: null })))).toMatchObject({
      kind: 'absent',
      why: 'The shots are too few to speak of consistency.',
    });
  });

  test.each([
    [
      'an interval upside down',
      { interval: { low: 11, high: 4 } },
      'Alder: 11, 6, 4 must be numbers in rising order.',
    ],
    ['a broken spread', { spread: Number.NaN }, 'Alder: 4, NaN, 11 must be numbers'],
    ['a spread under nought', { spread: -1, interval: null }, 'a spread cannot be under 0'],
    ['a seventh contender', { contender: { label: 'Gorse', index: 6 } }, 'not for number 7'],
  ])('refuses %s', (_, row, message) => {
    expect(() => drawSpread(only(row))).toThrow(message);
  });
});
