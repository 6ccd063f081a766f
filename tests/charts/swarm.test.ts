import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { contenderMarks } from '../../src/charts/contenderMarks.ts';
import { shotExtent } from '../../src/charts/shotsStrip.ts';
import { swarm, type Sized } from '../../src/charts/swarm.ts';
import { outline, distanceBetween } from './outlines.ts';

const radius = 4.5;

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
