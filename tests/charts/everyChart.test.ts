import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { deliveryChart } from '../../src/charts/delivery.ts';
import type { Figure } from '../../src/charts/figure.ts';
import { figureTraits } from '../../src/charts/figureTraits.ts';
import { pooledRowsChart } from '../../src/charts/pooledRows.ts';
import { landingChart } from '../../src/charts/landing.ts';
import { launchChart } from '../../src/charts/launch.ts';
import { luckChart } from '../../src/charts/luck.ts';
import { orderChart } from '../../src/charts/order.ts';
import { literalColours } from '../../src/charts/palette.ts';
import { spreadChart } from '../../src/charts/spread.ts';
import { withAndWithoutChart } from '../../src/charts/withAndWithout.ts';
import { yardsChart } from '../../src/charts/yards.ts';
import { deliveryInputOf, deliveryRows } from './examples/delivery.ts';
import { golferRowsOf, withAndWithoutExample, yardsExample } from './examples/gaps.ts';
import { landingExample } from './examples/landing.ts';
import { launchExample } from './examples/launch.ts';
import { luckExample } from './examples/luck.ts';
import { orderExample } from './examples/order.ts';
import { spreadExample } from './examples/spread.ts';
import { inherited, parseSvg } from './inspectSvg.ts';

const charts: readonly (readonly [string, () => Figure])[] = [
  ['landing', () => landingChart(landingExample)],
  ['order', () => orderChart(orderExample)],
  ['delivery', () => deliveryChart(deliveryInputOf(deliveryRows))],
  ['luck', () => luckChart(luckExample)],
  ['with-and-without', () => withAndWithoutChart(withAndWithoutExample)],
  ['hitters', () => pooledRowsChart(golferRowsOf(6))],
  ['spread', () => spreadChart(spreadExample)],
  ['yards', () => yardsChart(yardsExample)],
  ['launch-and-spin', () => launchChart(launchExample)],
];

test('every chart is tried here, or has tests of its own', () => {
  const own = ['apart', 'shots', 'meetings'];
  const tried = charts.map(([name]) => name);
  expect([...tried, ...own].sort()).toEqual(Object.keys(figureTraits).sort());
});

const contenderColours = ['umber', 'bluebell', 'pine', 'rose', 'heather', 'lichen'].map(
  (name) => `var(--${name})`,
);

describe.each(charts)('%s', (_, draw) => {
  const figure = draw();
  if (figure.kind !== 'drawn') throw new Error(figure.why);
  const { wide, narrow } = figure.svg;

  test('two drawings are the same bytes', () => {
    expect(draw()).toEqual(figure);
  });

  test('wide and narrow share no id and have the widths of their columns', () => {
    const ids = (svg: string): readonly string[] =>
      [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id ?? '');
    expect(ids(narrow).filter((id) => ids(wide).includes(id))).toEqual([]);
    expect([wide, narrow].map((svg) => parseSvg(svg).getAttribute('width'))).toEqual(['720', '288']);
  });

  test('has a value for every colour on both grounds', () => {
    for (const ground of ['light', 'dark'] as const)
      for (const svg of [wide, narrow]) expect(literalColours(svg, ground)).not.toContain('var(');
  });

  test('contender colour sets no type and fills no areas, only marks', () => {
    for (const element of parseSvg(wide).querySelectorAll('text, rect')) {
      expect(contenderColours).not.toContain(inherited(element, 'fill'));
    }
  });

  test('the two variants together weigh under 8 kB on the wire', () => {
    expect(gzipSync(wide + narrow).length).toBeLessThan(8000);
  });
});
