import { describe, expect, test } from 'vitest';
import { contourLines, outlineWithin, type Grid } from '../../src/charts/contourLines.ts';

const grid = (columns: number, rows: number, value: (x: number, y: number) => number): Grid =>
  Array.from({ length: rows }, (_, y) => Array.from({ length: columns }, (_unused, x) => value(x, y)));

describe('contour lines', () => {
  test('of a plane are straight, from edge to edge', () => {
    expect(
      contourLines(
        grid(4, 3, (x) => x),
        1.25,
      ),
    ).toEqual([
      [
        { x: 1.25, y: 0 },
        { x: 1.25, y: 1 },
        { x: 1.25, y: 2 },
      ],
    ]);
  });

  test('of a cone are one circle that closes, as near as a grid allows', () => {
    const [circle = [], ...more] = contourLines(
      grid(41, 41, (x, y) => Math.hypot(x - 20, y - 20)),
      12.3,
    );
    expect(more).toEqual([]);
    expect(circle.at(-1)).toEqual(circle[0]);
    // A circle of 12.3 crosses some 4 x 2 x 12.3 edges of the grid.
    expect(circle.length).toBeGreaterThan(90);
    for (const { x, y } of circle) expect(Math.hypot(x - 20, y - 20)).toBeCloseTo(12.3, 1);
    const area = circle.reduce((sum, { x, y }, index) => {
      const next = circle[(index + 1) % circle.length] ?? { x: 0, y: 0 };
      return sum + (x * next.y - next.x * y) / 2;
    }, 0);
    expect(Math.abs(area) / (Math.PI * 12.3 ** 2)).toBeCloseTo(1, 2);
  });

  test('of two hills are two lines', () => {
    const hills = grid(31, 15, (x, y) => Math.min(Math.hypot(x - 7, y - 7), Math.hypot(x - 23, y - 7)));
    expect(contourLines(hills, 4.4)).toHaveLength(2);
  });

  test('at a saddle the middle of the cell decides which corners are joined', () => {
    const saddle = (middleUp: number): Grid => [
      [0, 1 + middleUp],
      [1 + middleUp, 0],
    ];
    // Middle 0.75, above 0.5: the low corners are cut off, each by its own line.
    const cut = contourLines(saddle(0.5), 0.5).map((line) => line.map(({ x, y }) => x + y));
    for (const sums of cut) expect(Math.max(...sums) < 1 || Math.min(...sums) > 1).toBe(true);
    // Middle 0.4, under 0.5: the low corners are joined.
    const joined = contourLines(saddle(-0.2), 0.5).map((line) => line.map(({ x, y }) => x - y));
    for (const gaps of joined) expect(Math.max(...gaps) < 0 || Math.min(...gaps) > 0).toBe(true);
    expect([cut.length, joined.length]).toEqual([2, 2]);
  });

  test('there are none where all lies on one side, or the grid is a single line', () => {
    expect(
      contourLines(
        grid(4, 4, () => 1),
        3,
      ),
    ).toEqual([]);
    expect(
      contourLines(
        grid(4, 1, (x) => x),
        1.5,
      ),
    ).toEqual([]);
  });
});

describe('the outline of all within a level', () => {
  test('is cut along the edge where the grid ends before it does', () => {
    const { crossed, cut } = outlineWithin(
      grid(41, 41, (x, y) => Math.hypot(x, y - 20)),
      12.3,
    );
    for (const { x, y } of crossed.flat()) expect(Math.hypot(x, y - 20)).toBeCloseTo(12.3, 1);
    for (const { x } of cut.flat()) expect(x).toBe(0);
    const ends = cut.flat().map(({ y }) => y);
    expect([Math.min(...ends), Math.max(...ends)]).toEqual([
      expect.closeTo(7.7, 6) as number,
      expect.closeTo(32.3, 6) as number,
    ]);
    // A half circle: what is crossed reaches from end to end.
    expect(crossed.flatMap((line) => [line[0], line.at(-1)]).map((spot) => spot?.y)).toEqual(
      expect.arrayContaining([expect.closeTo(7.7, 6) as number, expect.closeTo(32.3, 6) as number]),
    );
  });

  test('is the line itself where it closes within the grid, and goes round the whole grid where all is within', () => {
    const cone = grid(41, 41, (x, y) => Math.hypot(x - 20, y - 20));
    const whole = outlineWithin(cone, 12.3);
    const places = (lines: readonly (readonly { x: number; y: number }[])[]): readonly string[] =>
      lines.map((line) => line.map(({ x, y }) => `${x.toFixed(6)} ${y.toFixed(6)}`).join());
    expect(places(whole.crossed)).toEqual(places(contourLines(cone, 12.3)));
    expect(whole.cut).toEqual([]);
    const { crossed, cut } = outlineWithin(
      grid(4, 3, () => 1),
      2,
    );
    expect(crossed).toEqual([]);
    const corners = cut.flat().map(({ x, y }) => `${x} ${y}`);
    expect(corners).toEqual(expect.arrayContaining(['0 0', '3 0', '3 2', '0 2']));
  });
});
