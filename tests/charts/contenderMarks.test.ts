import { describe, expect, test } from 'vitest';
import { contenderMark, contenderMarks, markExtent } from '../../src/charts/contenderMarks.ts';
import { inside, outline, type Outline } from './outlines.ts';

const pairs = contenderMarks.flatMap((one, i) =>
  contenderMarks.slice(i + 1).map((other) => [one.shape, other.shape, one, other] as const),
);

/** Share of the ground two marks cover together that both cover, on a fine grid. */
const overlap = (one: Outline, other: Outline): number => {
  let both = 0;
  let either = 0;
  for (let x = -1.5; x <= 1.5; x += 0.02) {
    for (let y = -1.5; y <= 1.5; y += 0.02) {
      const [first, second] = [inside([x, y], one), inside([x, y], other)];
      if (first && second) both += 1;
      if (first || second) either += 1;
    }
  }
  return both / either;
};

describe('contender marks', () => {
  test('there are six, told apart by shape, by line and by colour', () => {
    for (const key of ['shape', 'line', 'colour'] as const) {
      expect(new Set(contenderMarks.map((mark) => mark[key])).size).toBe(6);
    }
    expect(new Set(contenderMarks.map(({ dashes }) => dashes.join())).size).toBe(6);
  });

  test.each(pairs)('in grey %s and %s cover different ground', (_one, _other, one, other) => {
    expect(overlap(outline(one, 0, 0, 1), outline(other, 0, 0, 1))).toBeLessThan(0.87);
  });

  test('have about equal weight: none covers less than 3/4 of what a disc covers, none more than the disc by a tenth', () => {
    const area = (of: Outline): number =>
      Math.abs(
        of.reduce((sum, [x, y], index) => {
          const [nextX, nextY] = of[(index + 1) % of.length] ?? [0, 0];
          return sum + x * nextY - nextX * y;
        }, 0),
      ) / 2;
    for (const mark of contenderMarks) {
      const share = area(outline(mark, 0, 0, 1)) / Math.PI;
      expect(share).toBeGreaterThan(0.75);
      expect(share).toBeLessThan(1.1);
    }
  });

  test('at 4.5 px they have the sizes of the design', () => {
    const size = (index: number): readonly string[] => {
      const { left, right, up, down } = markExtent(contenderMark(index), 4.5);
      return [(left + right).toFixed(1), (up + down).toFixed(1)];
    };
    expect([0, 1, 3, 5].map(size)).toEqual([
      ['9.0', '9.0'],
      ['8.0', '8.0'],
      ['8.4', '12.8'],
      ['9.6', '10.8'],
    ]);
  });

  test('there is none for a seventh contender', () => {
    expect(() => contenderMark(6)).toThrow('There are marks for 6 contenders, not for number 7.');
  });
});
