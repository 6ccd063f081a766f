import { describe, expect, test } from 'vitest';
import { gapScale } from '../../src/charts/gapScale.ts';
import { layouts } from '../../src/charts/layout.ts';

const room = { from: 0, to: 288 };
const scaleOf = (gaps: readonly number[], matters: number, unit = 'yards') =>
  gapScale(gaps, matters, unit, layouts.narrow, room);

describe('the scale of gaps', () => {
  test('grows to the right and runs a twenty-fifth of its length beyond both ends', () => {
    const { place } = scaleOf([2, 18], 5);
    expect(place(5)).toBeGreaterThan(place(0));
    expect(place(-5 - 0.04 * 23)).toBeCloseTo(0, 6);
    expect(place(18 + 0.04 * 23)).toBeCloseTo(288, 6);
  });

  test('holds 0 though every gap lies far from it and nothing is too small to matter', () => {
    expect(scaleOf([8, 18], 0).place(0)).toBeGreaterThan(0);
    expect(scaleOf([-18, -8], 0).place(0)).toBeLessThan(288);
  });

  test('places the same gaps alike in yards and in metres', () => {
    const metres = 0.9144;
    const [yards, inMetres] = [
      scaleOf([-3, 11], 4),
      scaleOf([-3 * metres, 11 * metres], 4 * metres, 'metres'),
    ];
    for (const gap of [-4, -1.3, 0, 2.7, 11]) expect(inMetres.place(gap * metres)).toBe(yards.place(gap));
  });

  test('counts outward, the last number with its unit', () => {
    expect(scaleOf([-9, 11], 4).ticks.map(({ text }) => text)).toEqual(['5', '0', '5', '10 yards']);
    expect(scaleOf([0.01, 0.05], 0.02, '').ticks.map(({ text }) => text)).toEqual([
      '0.02',
      '0',
      '0.02',
      '0.04',
    ]);
  });

  test('leaves out a number that the one with the unit would touch', () => {
    const { ticks } = scaleOf([-1900, 2100], 300, 'rpm');
    expect(ticks.at(-1)?.text).toBe('2,000 rpm');
    expect(ticks.filter(({ text }) => text === '').length).toBeLessThan(ticks.length - 1);
  });

  test('has a length where everything is 0', () => {
    const { place } = scaleOf([0, 0], 0);
    expect(place(0)).toBe(144);
  });
});
