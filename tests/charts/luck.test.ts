import { describe, expect, test } from 'vitest';
import type { DrawnFigure } from '../../src/charts/figure.ts';
import { luckExample, luckInputOf } from './examples/luck.ts';
import { brokenRules, inherited, parseSvg, placedTexts } from './inspectSvg.ts';
import { drawLuck, type LuckInput } from '../../src/charts/luck.ts';
import { exampleFigure } from './examples/exampleFigure.ts';

const draw = (given: LuckInput): DrawnFigure => {
  const figure = exampleFigure('luck', drawLuck(given));
  if (figure.kind !== 'drawn') throw new Error(figure.why);
  return figure;
};

/** Upright ticks, px: across, from, to. */
const ticks = (svg: string) =>
  [...parseSvg(svg).querySelectorAll('path')]
    .filter((path) => inherited(path, 'stroke') === 'var(--ink)' && inherited(path, 'stroke-width') === '2.5')
    .map((path) => [...(path.getAttribute('d') ?? '').matchAll(/-?[\d.]+/g)].map(Number));

describe('Luck yardstick', () => {
  const figure = draw(luckExample);
  const variants = ['wide', 'narrow'] as const;

  test.each(variants)('%s is drawn as it was approved', async (variant) => {
    await expect(figure.svg[variant].replaceAll('><', '>\n<')).toMatchFileSnapshot(
      `golden/luck-${variant}.svg`,
    );
  });

  test.each(variants)(
    '%s: luck below the rule and what was seen above it, on one scale from 0',
    (variant) => {
      const svg = figure.svg[variant];
      const [average = [], upTo = [], seen = []] = ticks(svg);
      const numbers = placedTexts(svg);
      const nought = numbers.find(({ text }) => text === '0');
      const twelve = numbers.find(({ text }) => text === '12');
      if (nought === undefined || twelve === undefined) throw new Error('no such numbers');
      const zero = (nought.left + nought.right) / 2;
      // The last number is kept inside the edge, so that the yard comes from the ticks.
      const yard = ((upTo[0] ?? 0) - (average[0] ?? 0)) / 3;
      expect((average[0] ?? 0) - zero).toBeCloseTo(3 * yard, -0.5);
      expect((seen[0] ?? 0) - zero).toBeCloseTo(12 * yard, -0.5);
      const rule = Number(parseSvg(svg).querySelector('circle')?.getAttribute('cy'));
      expect(Math.max(average[1] ?? 0, average[3] ?? 0)).toBeGreaterThan(rule);
      expect(Math.max(seen[1] ?? Infinity, seen[3] ?? Infinity)).toBeLessThan(rule);
    },
  );

  test('the pair and its answer stand beside the tick, chance under the rule', () => {
    const words = placedTexts(figure.svg.wide).map(({ text }) => text);
    expect(words).toEqual(expect.arrayContaining(['Alder and Cedar: 12 yards apart', 'Clear difference']));
    expect(words).toContain('By luck: about 3 yards, now and then 6');
  });

  const long = luckInputOf(3, 6, 12, 'yards', {
    seen: {
      gap: 12,
      words: ['Wintergreen Extra Long Name and Sassafrasandbuttonwood Z: 12 yards apart', 'Clear difference'],
    },
  });
  const cases: readonly (readonly [string, LuckInput])[] = [
    ['more seen than luck brings', luckExample],
    ['less seen than luck brings', luckInputOf(5, 8, 0)],
    ['as much seen as luck brings', luckInputOf(5, 5, 5)],
    ['very much more seen', luckInputOf(1, 2, 400)],
    ['long names', long],
    ['small units', luckInputOf(0.01, 0.02, 0.034, 'in smash factor')],
    ['large units', luckInputOf(310, 640, 1450, 'turns a minute')],
  ];
  test.each(cases)('%s: text large enough, apart and inside; ids, names and numbers in order', (_, given) => {
    const { svg } = draw(given);
    expect(brokenRules(svg.wide)).toEqual([]);
    expect(brokenRules(svg.narrow)).toEqual([]);
  });

  test.each([
    ['luck of nothing', luckInputOf(0, 6, 12), 'Luck brings 0 on average'],
    ['luck out of order', luckInputOf(6, 3, 12), 'Luck brings 6 on average and up to 3'],
    ['a gap under nought', luckInputOf(3, 6, -1), 'The gap seen is -1'],
    ['a broken gap', luckInputOf(3, 6, Number.NaN), 'The gap seen is NaN'],
  ])('refuses %s', (_, given, message) => {
    expect(() => drawLuck(given)).toThrow(message);
  });
});
