import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import type { MadeChart } from '../../src/charts/madeChart.ts';
import { charts, reportCharts, type ReportChart } from '../../src/charts/charts.ts';
import { literalColours } from '../../src/charts/palette.ts';
import { deliveryInputOf, deliveryRows } from './examples/delivery.ts';
import { golferRowsOf, withAndWithoutExample, yardsExample } from './examples/gaps.ts';
import { landingExample } from './examples/landing.ts';
import { launchExample } from './examples/launch.ts';
import { luckExample } from './examples/luck.ts';
import { orderExample } from './examples/order.ts';
import { spreadExample } from './examples/spread.ts';
import { inherited, parseSvg } from './inspectSvg.ts';
import { drawDelivery } from '../../src/charts/deliveryDrawing.ts';
import { drawPooledRows } from '../../src/charts/pooledRows.ts';
import { drawLanding } from '../../src/charts/landingDrawing.ts';
import { drawLaunch } from '../../src/charts/launchDrawing.ts';
import { drawLuck } from '../../src/charts/luck.ts';
import { drawOrder } from '../../src/charts/orderDrawing.ts';
import { drawSpread } from '../../src/charts/spread.ts';
import { drawWithAndWithout } from '../../src/charts/withAndWithout.ts';
import { drawYards } from '../../src/charts/yards.ts';
import { exampleFigure } from './examples/exampleFigure.ts';

const tried: Readonly<Partial<Record<ReportChart, () => MadeChart>>> = {
  landing: () => drawLanding(landingExample),
  order: () => drawOrder(orderExample),
  delivery: () => drawDelivery(deliveryInputOf(deliveryRows)),
  luck: () => drawLuck(luckExample),
  'with-and-without': () => drawWithAndWithout(withAndWithoutExample),
  hitters: () => drawPooledRows(golferRowsOf(6)),
  spread: () => drawSpread(spreadExample),
  yards: () => drawYards(yardsExample),
  'launch-and-spin': () => drawLaunch(launchExample),
};

test('every chart is tried here, or has tests of its own', () => {
  const own = ['apart', 'shots', 'meetings'];
  expect([...Object.keys(tried), ...own].sort()).toEqual(Object.keys(charts).sort());
});

const contenderColours = ['umber', 'bluebell', 'pine', 'rose', 'heather', 'lichen'].map(
  (name) => `var(--${name})`,
);

const examples = reportCharts.flatMap((chart) => {
  const make = tried[chart];
  return make === undefined ? [] : [{ chart, draw: () => exampleFigure(chart, make()) }];
});

describe.each(examples)('$chart', ({ draw }) => {
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
