import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { heightOf, sheetGrowth, sheetGrowths } from '../../src/kit/sheetGrowth.ts';

test('the fewer words and the lower the chart, the larger the type', () => {
  const growth = (characters: number, chartHeight = 200): number =>
    sheetGrowth({ characters, answers: 1, chartHeight });
  expect(growth(1200)).toBeGreaterThan(growth(1700));
  expect(growth(1700, 120)).toBeGreaterThan(growth(1700, 320));
  expect(growth(4000)).toBe(100);
  expect(growth(200)).toBe(sheetGrowths.at(-1));
});

test('every size has its class in the style sheet', () => {
  const css = readFileSync('src/styles/sheet.css', 'utf8');
  for (const growth of sheetGrowths)
    expect(css).toContain(`.grow-${growth} {\n  --grow: ${growth / 100};\n}`);
});

test('a chart tells its height', () => {
  expect(heightOf('<svg class="chart" width="720" height="240.5"><rect height="9"/></svg>')).toBe(240.5);
  expect(heightOf('<svg width="720"><rect height="9"/></svg>')).toBe(0);
});
