import * as Plot from '@observablehq/plot';
import { dot, plot, text, type Markish, type RenderFunction } from '@observablehq/plot';
import { describe, expect, test, vi } from 'vitest';
import { renderChart, type ChartDrawing } from '../../src/charts/renderChart.ts';
import { hatch, hatched } from '../../src/charts/signs.ts';
import { parseSvg } from './inspectSvg.ts';

const drawing = (marks: readonly Markish[], prefix = 'apart-wide'): ChartDrawing => ({
  prefix,
  name: 'How far apart? Carry of three heads',
  width: 100,
  height: 40,
  marks: marks.map((mark) => () => mark),
});
const spot = [{ x: 10.123456, y: 20 }];
const area = [{ x1: 1, y1: 1, x2: 9, y2: 9 }];

describe('renderChart', () => {
  test('makes one named image without styles or inner labels', () => {
    const svg = renderChart(
      drawing([dot(spot, { x: 'x', y: 'y' }), text(spot, { x: 'x', y: 'y', text: () => 'a' })]),
    );
    const root = parseSvg(svg);
    expect(root.getAttribute('role')).toBe('img');
    expect(root.getAttribute('aria-labelledby')).toBe('apart-wide-name');
    expect(root.querySelector('title')?.textContent).toBe('How far apart? Carry of three heads');
    expect(root.querySelectorAll('style, [style], g[aria-label]')).toHaveLength(0);
    expect(root.getAttribute('viewBox')).toBe('0 0 100 40');
    expect(root.querySelector('text')?.textContent).toBe('a');
  });

  test('rounds places to a tenth of a pixel', () => {
    const circle = parseSvg(renderChart(drawing([dot(spot, { x: 'x', y: 'y' })]))).querySelector('circle');
    expect(circle?.getAttribute('cx')).toBe('10.1');
  });

  test('gives ids and their references the prefix, so that two charts share none', () => {
    const clipped = dot(spot, { x: 'x', y: 'y', clip: 'frame' });
    const ids = (prefix: string): readonly string[] =>
      [
        ...renderChart(drawing([hatch(Plot), hatched(area)(Plot), clipped], prefix)).matchAll(
          / id="([^"]+)"/g,
        ),
      ].map(([, id]) => id ?? '');
    const [first, second] = [ids('a-wide'), ids('a-narrow')];
    expect(first).toEqual(['a-wide-name', 'a-wide-1', 'a-wide-2']);
    expect(second.filter((id) => first.includes(id))).toEqual([]);
    const svg = renderChart(drawing([hatch(Plot), hatched(area)(Plot), clipped], 'a-wide'));
    expect([...svg.matchAll(/url\(#([^)]+)\)/g)].map(([, id]) => id).sort()).toEqual([
      'a-wide-1',
      'a-wide-2',
    ]);
  });

  test('draws the same bytes every time, clip paths too', () => {
    const draw = (): string => renderChart(drawing([dot(spot, { x: 'x', y: 'y', clip: 'frame' })]));
    expect(draw()).toBe(draw());
  });

  test('sets no global document', () => {
    renderChart(drawing([dot(spot, { x: 'x', y: 'y' })]));
    expect('document' in globalThis || 'window' in globalThis).toBe(false);
  });

  test('keeps text as text, whatever it holds', () => {
    const svg = renderChart({
      ...drawing([
        text(spot, { x: 'x', y: 'y', text: () => '</text><script>alert(1)</script>&\u00a0"\u0007' }),
      ]),
      name: '<b> & "c"',
    });
    expect(svg).not.toMatch(/<script|<b>|\u0007|&nbsp;/);
    // eslint-disable-next-line no-control-regex
    expect(svg.match(/&(?!amp;|lt;|gt;|quot;|#\d+;)/)).toBeNull();
    expect(svg).toContain('&lt;/text&gt;&lt;script&gt;');
  });

  test('fails on a warning of Plot, and puts the console back', () => {
    const dates = [{ day: '2026-04-11' }, { day: '2026-04-12' }];
    const warned: RenderFunction = (_index, _scales, _values, _dimensions, { document }) => {
      plot({ document, marks: [dot(dates, { x: 'day' })] });
      return null;
    };
    const warn = vi.spyOn(console, 'warn').mockImplementation(() => undefined);
    const spied = console.warn;
    expect(() => renderChart(drawing([warned]))).toThrow(/drawn with a warning: Warning: some data/);
    expect(console.warn).toBe(spied);
    expect(warn).not.toHaveBeenCalled();
    warn.mockRestore();
  });

  test('fails on a warning sign, a broken number and a broken text', () => {
    const saying = (words: string): ChartDrawing =>
      drawing([text(spot, { x: 'x', y: 'y', text: () => words })]);
    expect(() => renderChart(saying('\u26A0 1 warning'))).toThrow('which no chart may show');
    expect(() => renderChart(saying('about NaN yards'))).toThrow('The chart has the text "NaN"');
    expect(() => renderChart(saying('undefined'))).toThrow('The chart has the text "undefined"');
    expect(() => renderChart(drawing([dot([{ x: Infinity, y: 1 }], { x: 'x', y: 'y' })]))).toThrow(
      'The chart has a broken number: <circle cx="Infinity">.',
    );
  });

  test('fails on a reference to nothing', () => {
    expect(() => renderChart(drawing([hatched(area)(Plot)]))).toThrow(
      'The chart refers to "#hatch", which is not in it.',
    );
  });
});
