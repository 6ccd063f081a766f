import { resolve } from 'node:path';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { ringAndBarOf, type RingAndBar } from '../../src/charts/ringAndBar.ts';
import {
  inList,
  ringAndBarDrawing,
  ringAndBarSize,
  ringAndBarSvg,
} from '../../src/charts/ringAndBarDrawing.ts';
import { literalColours } from '../../src/charts/palette.ts';
import { textWidth } from '../../src/charts/textWidth.ts';
import { surestFirst } from '../../src/prose/pairAnswer.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { inOtherUnits } from '../../src/site/toldTwice.ts';

const { reports } = loadSite(resolve('content'));
const telling = (slug: string) => {
  const found = reports.find(({ source }) => source.slug === slug);
  if (found === undefined) throw new Error(`no ${slug}`);
  return found.telling;
};

const pair = (estimate: number, low: number, high: number): RingAndBar['rows'][number] => ({
  ...{ estimate, low, high },
  credit: 'credited',
  ahead: 'a',
  behind: 'b',
});
const sign = (rows: RingAndBar['rows'], rest: Partial<RingAndBar> = {}): RingAndBar => ({
  ...{ rows, matters: 4, from: -5, to: 16, far: { at: 16, words: '16 yards farther' } },
  ...rest,
});
const root = (svg: string): Element => {
  const found = parseHTML(`<html><body>${svg}</body></html>`).document.querySelector('svg');
  if (found === null) throw new Error('no picture');
  return found;
};
const drawn = (of: RingAndBar): Element => root(ringAndBarSvg(of, { title: 'A & B' }, 'one'));
/** Bars of a stroke width as [from, to], px. */
const bars = (svg: Element, width: string): readonly (readonly number[])[] =>
  [...svg.querySelectorAll(`path[stroke-width="${width}"]`)].flatMap((path) =>
    [...(path.getAttribute('d') ?? '').matchAll(/M([\d.]+),[\d.]+H([\d.]+)/g)].map(([, from, to]) => [
      Number(from),
      Number(to),
    ]),
  );
const inset = 6.25;
const x = (value: number): number => inset + ((value + 5) / 21) * (300 - 2 * inset);

describe('the picture', () => {
  test('has a bar thin where it lies in the band and thick outside, and a ring at the best estimate', () => {
    const svg = drawn(sign([pair(7, 2, 12)]));
    expect(bars(svg, '2.5')[0]?.[0]).toBeCloseTo(x(2), 0);
    expect(bars(svg, '2.5')[0]?.[1]).toBeCloseTo(x(12), 0);
    expect(bars(svg, '8')).toHaveLength(1);
    expect(bars(svg, '8')[0]?.[0]).toBeCloseTo(x(4), 0);
    expect(bars(svg, '8')[0]?.[1]).toBeCloseTo(x(12), 0);
    expect(Number(svg.querySelector('circle')?.getAttribute('cx'))).toBeCloseTo(x(7), 0);
  });

  test('is thick at both ends where a bar crosses the band, thin throughout within it', () => {
    expect(bars(drawn(sign([pair(1, -5, 8)])), '8')).toHaveLength(2);
    expect(bars(drawn(sign([pair(1, -2, 3)])), '8')).toEqual([]);
  });

  test('does not fill the bar of a pair whose credit is open', () => {
    const svg = drawn(sign([{ ...pair(7, 2, 12), credit: 'open' }]));
    expect(bars(svg, '8')).toEqual([]);
    const box = svg.querySelector('path[fill="var(--paper)"]');
    expect(box?.getAttribute('d')).toMatch(/z$/);
    // Within the band and beyond it.
    expect(svg.querySelectorAll('path[fill="var(--paper)"]')).toHaveLength(2);
    expect(bars(svg, '2')).toEqual([]);
    expect(drawn(sign([pair(7, 2, 12)])).querySelector('path[fill="var(--paper)"]')).toBeNull();
  });

  test('shades and edges what is too small to matter; where nothing is, there is no band', () => {
    const svg = drawn(sign([pair(7, 2, 12)]));
    const area = svg.querySelector('rect[fill="url(#one-hatch)"]');
    expect(Number(area?.getAttribute('x'))).toBeCloseTo(x(-4), 0);
    expect(Number(area?.getAttribute('width'))).toBeCloseTo(x(4) - x(-4), 0);
    expect(svg.querySelector('#one-hatch')).not.toBeNull();
    expect(svg.querySelectorAll('path[stroke="var(--band-edge)"]')).toHaveLength(1);
    expect(drawn(sign([pair(7, 2, 12)], { matters: 0 })).querySelector('pattern')).toBeNull();
  });

  test('is one image with a name of its own, or that of the finding beside it', () => {
    const own = drawn(sign([pair(7, 2, 12)]));
    expect(own.getAttribute('role')).toBe('img');
    expect(own.querySelector('title')?.textContent).toBe('A & B');
    expect(own.getAttribute('aria-labelledby')).toBe(own.querySelector('title')?.id);
    const beside = root(ringAndBarSvg(sign([pair(7, 2, 12)]), { labelledBy: 'finding-x' }, 'two'));
    expect(beside.getAttribute('aria-labelledby')).toBe('finding-x');
    expect(beside.querySelector('title')).toBeNull();
  });

  test('keeps its 0 clear of the words at the far end', () => {
    const wide = sign([pair(1, -16, 17)], {
      from: -17,
      to: 18,
      far: { at: 18, words: '18 metres nearer the line' },
    });
    const zero = drawn(wide).querySelector('text');
    expect(zero?.getAttribute('text-anchor')).toBe('end');
    const left = 300 - textWidth('18 metres nearer the line', inList.text, 400);
    expect(Number(zero?.getAttribute('x'))).toBeLessThan(Math.max(150, left));
    expect(
      drawn(sign([pair(7, 2, 12)]))
        .querySelector('text')
        ?.getAttribute('text-anchor'),
    ).toBe('middle');
  });

  test('grows whole for another surface, without colours that hang on a page', () => {
    const size = ringAndBarSize(600, 2);
    const { marks, width, height } = ringAndBarDrawing(sign([pair(7, 2, 12)]), 'card', size);
    expect([width, height]).toEqual([600, 2 * 22 + Math.ceil(29 * 1.5)]);
    expect(marks).toContain('stroke-width="16"');
    expect(literalColours(marks, 'light')).not.toContain('var(');
  });
});

describe('of a report', () => {
  test('shows its first three pairs, the surest first, the one ahead on the right', () => {
    for (const { telling: own, findings } of reports) {
      const made = ringAndBarOf(own);
      const [metric] = findings.metrics.filter(({ role }) => role === 'primary');
      if (metric === undefined || made === null) throw new Error(findings.slug);
      const judged = surestFirst(metric).filter(({ estimate }) => estimate !== null);
      expect(made.rows.map(({ ahead, behind }) => [ahead, behind].toSorted())).toEqual(
        judged.slice(0, 3).map(({ a, b }) => [a, b].toSorted()),
      );
      for (const { estimate, low, high } of made.rows) {
        expect(estimate).toBeGreaterThanOrEqual(0);
        expect(low).toBeGreaterThan(made.from);
        expect(high).toBeLessThanOrEqual(made.to);
      }
    }
    expect(reports.length).toBeGreaterThan(5);
  });

  test('leaves open what the order of its shots leaves open', () => {
    const credits = ringAndBarOf(telling('fairway-woods-two-golfers'))?.rows.map(({ credit }) => credit);
    expect(credits).toContain('open');
    expect(ringAndBarOf(telling('three-balls-one-iron'))?.rows.map(({ credit }) => credit)).toEqual([
      'credited',
      'credited',
      'credited',
    ]);
  });

  test('draws every mark alike in both systems of units, and one round number in each', () => {
    for (const { telling: own } of reports) {
      const [yards, metres] = [own, inOtherUnits(own)].map(ringAndBarOf);
      if (yards == null || metres == null) throw new Error(own.findings.slug);
      expect({ ...metres, far: yards.far }).toEqual(yards);
      expect(metres.far.at).toBeLessThanOrEqual(metres.to + 1e-9);
      expect(metres.far.at).toBeGreaterThan(metres.to * 0.7);
    }
    expect(ringAndBarOf(telling('three-balls-one-iron'))?.far.words).toMatch(/^\d+ yards farther$/);
    expect(ringAndBarOf(inOtherUnits(telling('three-balls-one-iron')))?.far.words).toMatch(
      /^\d+ metres farther$/,
    );
  });

  test('is none where no pair was judged', () => {
    const own = telling('three-balls-one-iron');
    const metrics = own.findings.metrics.map((metric) => ({
      ...metric,
      pairs: metric.pairs.map((one) => ({ ...one, estimate: null, ci: null, status: 'not-judged' as const })),
    }));
    expect(ringAndBarOf({ ...own, findings: { ...own.findings, metrics } })).toBeNull();
  });
});
