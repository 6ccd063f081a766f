import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { contenderMarks } from '../../src/charts/contenderMarks.ts';
import { shotExtent } from '../../src/charts/shotsStrip.ts';
import { swarm, type Sized } from '../../src/charts/swarm.ts';
import { outline, distanceBetween } from './outlines.ts';

const radius = 4.5;

/** The rule of the swarm in plain words, for boxes: whoever can stay nearest to the line goes next, from left to right. */
function oneByOne(items: readonly Sized[], gap: number): readonly number[] {
  const heights = items.map(() => 0);
  const placed: number[] = [];
  const freeOf = (index: number): number => {
    const own = items[index];
    if (own === undefined) return 0;
    const blocked = placed.flatMap((at) => {
      const other = items[at];
      if (other === undefined) return [];
      const room = own.extent.right + other.extent.left + gap;
      if (Math.abs(own.x - other.x) >= room) return [];
      const height = heights[at] ?? 0;
      const [above, below] = [own.extent.down + other.extent.up, other.extent.down + own.extent.up];
      return [[height - (above + gap + 0.1), height + (below + gap + 0.1)] as const];
    });
    const free = [0, ...blocked.flat()].filter((height) =>
      blocked.every(([from, to]) => height <= from || height >= to),
    );
    return free.toSorted((one, other) => Math.abs(one) - Math.abs(other) || one - other)[0] ?? 0;
  };
  const waiting = items
    .map((_, index) => index)
    .toSorted((i, j) => (items[i]?.x ?? 0) - (items[j]?.x ?? 0) || i - j);
  while (waiting.length > 0) {
    const free = waiting.map(freeOf);
    const least = Math.min(...free.map(Math.abs));
    const next = free.findIndex((height) => Math.abs(height) === least);
    const [index = 0] = waiting.splice(next, 1);
    heights[index] = free[next] ?? 0;
    placed.push(index);
  }
  return heights;
}

describe('swarm', () => {
  test('marks that do not meet stay on the line', () => {
    const extent = { left: 5, right: 5, up: 5, down: 5 };
    expect(
      swarm(
        [0, 20, 40].map((x) => ({ x, extent, shape: null })),
        1,
      ),
    ).toEqual([0, 0, 0]);
  });

  test.each(contenderMarks.map((mark, index) => [mark.shape, index] as const))(
    '%s: no two marks touch, wherever they fall and whether left out or not',
    (_, index) => {
      const mark = contenderMarks[index];
      if (mark === undefined) throw new Error('no such mark');
      const shots = fc.array(
        fc.record({ x: fc.double({ min: 0, max: 60, noNaN: true }), leftOut: fc.boolean() }),
        {
          maxLength: 14,
        },
      );
      fc.assert(
        fc.property(shots, (drawn) => {
          const items: Sized[] = drawn.map(({ x, leftOut }) => ({
            x,
            extent: shotExtent(mark, leftOut, radius),
            shape: leftOut ? null : mark.shape,
          }));
          const heights = swarm(items, 1);
          const outlines = drawn.map(({ x, leftOut }, place) => {
            const y = heights[place] ?? Number.NaN;
            const edge = outline(mark, x, y, leftOut ? radius * 0.875 + 0.75 : radius + 0.5);
            const through = [
              [x - radius, y + radius],
              [x + radius, y - radius],
            ] as const;
            return leftOut ? [edge, through] : [edge];
          });
          for (const [i, one] of outlines.entries()) {
            for (const other of outlines.slice(i + 1)) {
              for (const a of one) for (const b of other) expect(distanceBetween(a, b)).toBeGreaterThan(0);
            }
          }
        }),
        { numRuns: 60 },
      );
    },
  );

  test('marks that fill their boxes stand where going through all of them one by one puts them', () => {
    const box = fc.record({ x: fc.integer({ min: 0, max: 90 }), half: fc.integer({ min: 2, max: 5 }) });
    fc.assert(
      fc.property(fc.array(box, { maxLength: 40 }), (drawn) => {
        const items: Sized[] = drawn.map(({ x, half }) => ({
          x,
          extent: { left: half, right: half, up: half, down: half },
          shape: null,
        }));
        expect(swarm(items, 1)).toEqual(oneByOne(items, 1));
      }),
    );
  });

  test('a crowd of 2,000 finds its places', () => {
    const extent = { left: 3, right: 3, up: 3, down: 3 };
    const items = Array.from({ length: 2000 }, (_, i) => ({ x: (i * 37) % 611, extent, shape: null }));
    const heights = swarm(items, 1);
    expect(new Set(items.map(({ x }, at) => `${x} ${heights[at]}`)).size).toBe(2000);
    // Boxes of 7 px in 611 px: one upon another they are some 165 px high where none is wasted.
    expect(Math.max(...heights) - Math.min(...heights)).toBeLessThan(400);
  }, 60_000);

  test('the same shots get the same heights', () => {
    const extent = { left: radius, right: radius, up: radius, down: radius };
    const items = Array.from({ length: 50 }, (_, i) => ({
      x: (i * 37) % 61,
      extent,
      shape: 'disc' as const,
    }));
    expect(swarm(items, 1)).toEqual(swarm(items, 1));
  });
});
