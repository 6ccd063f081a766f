import { greatestOf } from '../stats/extremes.ts';
import type { Extent, Shape } from './contenderMarks.ts';
import { queue } from './queue.ts';

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

/** Heights, open at both ends, that other marks keep from this one: ascending, none overlaps the next. */
type Blocked = (readonly [from: number, to: number])[];

/** Adds a stretch to those blocked, joined with all it overlaps; stretches that only touch leave their common end free. */
const block = (blocked: Blocked, from: number, to: number): void => {
  let first = blocked.length;
  while (first > 0 && (blocked[first - 1]?.[1] ?? from) > from) first -= 1;
  let last = first;
  while (last < blocked.length && (blocked[last]?.[0] ?? to) < to) last += 1;
  const joined = blocked.slice(first, last);
  const start = Math.min(from, joined[0]?.[0] ?? from);
  const end = Math.max(to, joined.at(-1)?.[1] ?? to);
  blocked.splice(first, joined.length, [start, end]);
};

/** The free height nearest to 0, the upper one of two. */
const nearestFree = (blocked: Blocked): number => {
  const [from, to] = blocked.find(([start, end]) => start < 0 && end > 0) ?? [0, 0];
  return Math.abs(from) <= Math.abs(to) ? from : to;
};

/** A mark that has no height yet, by its place from left to right. */
interface Waiting {
  readonly index: number;
  readonly item: Sized;
  readonly blocked: Blocked;
  best: number;
  placed: boolean;
}

/**
 * Heights about a middle line at 0, y down, in the order of `items`, at which no two come nearer than `gap`. Items move only up and down;
 * the one that can stay nearest to the line goes first, from left to right. Same items, same heights. Only marks so near across that they
 * could meet are looked at, so that a crowd twice as long takes little more than twice as long.
 */
export const swarm = (items: readonly Sized[], gap: number): readonly number[] => {
  const heights = items.map(() => 0);
  const across = [...items.entries()]
    .sort(([i, one], [j, other]) => one.x - other.x || i - j)
    .map(([index, item]): Waiting => ({ index, item, blocked: [], best: 0, placed: false }));
  // Half as much again as the gap is the most that any two shapes keep.
  const reach = 2 * greatestOf(items.map(({ extent }) => Math.max(extent.left, extent.right))) + 1.5 * gap;
  const next = queue(across.map((_, place) => ({ distance: 0, place })));
  for (;;) {
    const first = next.take();
    if (first === null) return heights;
    const own = across[first.place];
    if (own === undefined || own.placed) continue;
    // Marks only ever move away from the line: one that has moved since it was put in waits again.
    if (Math.abs(own.best) > first.distance) {
      next.put({ distance: Math.abs(own.best), place: first.place });
      continue;
    }
    own.placed = true;
    heights[own.index] = own.best;
    for (const step of [-1, 1]) {
      for (let place = first.place + step; ; place += step) {
        const other = across[place];
        if (other === undefined || Math.abs(other.item.x - own.item.x) > reach) break;
        if (other.placed) continue;
        const above = drop(other.item, own.item, gap);
        const below = drop(own.item, other.item, gap);
        if (above === null || below === null) continue;
        block(other.blocked, own.best - above, own.best + below);
        other.best = nearestFree(other.blocked);
      }
    }
  }
};
