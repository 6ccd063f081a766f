import type { Extent, Shape } from './contenderMarks.ts';

/** A mark with a fixed place across, and its size, px. */
export interface Sized {
  readonly x: number;
  readonly extent: Extent;
  /** Null for a mark that fills the whole box of its extent. */
  readonly shape: Shape | null;
}

/** Keeps rounding to a tenth of a pixel from bringing marks that just touch too near. */
const hair = 0.1;

/**
 * How far apart in height, px, two marks of one shape must be whose centres are `across` apart: the edge of the one shape swept round the
 * other (their Minkowski difference). `width` and `height` are those of one mark.
 */
const heightBetween = (shape: Shape, across: number, width: number, height: number): number => {
  if (across >= width) return 0;
  const share = across / width;
  switch (shape) {
    case 'disc':
      return height * Math.sqrt(1 - share ** 2);
    case 'lozenge':
      return height * (1 - share);
    case 'triangle':
      return height * Math.min(1, 2 * (1 - share));
    case 'square':
    case 'cross':
    case 'hourglass':
      return height;
  }
};

/** Least drop, px, from the centre of `upper` to that of `lower` at which they stay `gap` apart; null if they never meet. */
const drop = (upper: Sized, lower: Sized, gap: number): number | null => {
  const across = Math.abs(upper.x - lower.x);
  if (upper.shape !== null && upper.shape === lower.shape) {
    const { left, right, up, down } = upper.extent;
    // A slanting edge eats into a gap that is kept upright, so that slanting shapes get half as much again.
    const room = upper.shape === 'lozenge' || upper.shape === 'triangle' ? gap * 1.5 : gap;
    const height = heightBetween(upper.shape, across, left + right + room, up + down + room);
    return height > 0 ? height + hair : null;
  }
  const [left, right] = upper.x <= lower.x ? [upper, lower] : [lower, upper];
  return left.extent.right + right.extent.left + gap > across
    ? upper.extent.down + lower.extent.up + gap + hair
    : null;
};

/** Heights, open at both ends, that another mark keeps from this one. */
type Blocked = readonly [from: number, to: number];

/** The free height nearest to 0, the upper one of two. */
const nearestFree = (blocked: readonly Blocked[]): number =>
  [0, ...blocked.flat()]
    .sort((one, other) => Math.abs(one) - Math.abs(other) || one - other)
    .find((height) => blocked.every(([from, to]) => height <= from || height >= to)) ?? 0;

/**
 * Heights about a middle line at 0, y down, in the order of `items`, at which no two come nearer than `gap`. Items move only up and down;
 * the one that can stay nearest to the line goes first, from left to right. Same items, same heights.
 */
export const swarm = (items: readonly Sized[], gap: number): readonly number[] => {
  const heights = items.map(() => 0);
  const waiting = [...items.entries()]
    .sort(([i, one], [j, other]) => one.x - other.x || i - j)
    .map(([index, item]) => ({ index, item, blocked: [] as Blocked[], best: 0 }));
  while (waiting.length > 0) {
    let first = 0;
    for (const [place, { best }] of waiting.entries()) {
      if (Math.abs(best) < Math.abs(waiting[first]?.best ?? Infinity)) first = place;
    }
    for (const { index, item, best } of waiting.splice(first, 1)) {
      heights[index] = best;
      for (const other of waiting) {
        const above = drop(other.item, item, gap);
        const below = drop(item, other.item, gap);
        if (above === null || below === null) continue;
        other.blocked.push([best - above, best + below]);
        other.best = nearestFree(other.blocked);
      }
    }
  }
  return heights;
};
