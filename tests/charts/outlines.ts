import type { ContenderMark } from '../../src/charts/contenderMarks.ts';

export type Outline = readonly (readonly [x: number, y: number])[];

/** The corners of a mark at a place, a disc as a polygon of 48 corners on its circle. */
export const outline = (mark: ContenderMark, x: number, y: number, radius: number): Outline => {
  const unit: Outline =
    mark.corners.length > 0
      ? mark.corners
      : Array.from({ length: 48 }, (_, step) => {
          const angle = (step / 48) * 2 * Math.PI;
          return [Math.cos(angle), Math.sin(angle)];
        });
  return unit.map(([across, along]) => [x + across * radius, y + along * radius]);
};

type Segment = readonly [Outline[number], Outline[number]];

const edges = (of: Outline): readonly Segment[] =>
  of.flatMap((start, index) => {
    const end = of[(index + 1) % of.length];
    return end === undefined ? [] : [[start, end] as const];
  });

const toSegment = ([px, py]: Outline[number], [[ax, ay], [bx, by]]: Segment): number => {
  const [dx, dy] = [bx - ax, by - ay];
  const length = dx * dx + dy * dy;
  const along = length === 0 ? 0 : Math.min(1, Math.max(0, ((px - ax) * dx + (py - ay) * dy) / length));
  return Math.hypot(px - ax - along * dx, py - ay - along * dy);
};

/** Whether a point lies inside, by the even-odd rule. */
export const inside = ([px, py]: Outline[number], of: Outline): boolean =>
  edges(of).filter(
    ([[ax, ay], [bx, by]]) => ay > py !== by > py && px < ax + ((py - ay) / (by - ay)) * (bx - ax),
  ).length %
    2 ===
  1;

const crosses = ([a, b]: Segment, [c, d]: Segment): boolean => {
  const side = (p: Outline[number], q: Outline[number], r: Outline[number]): number =>
    Math.sign((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]));
  return side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b);
};

/** Least distance between two outlines, 0 where they meet or one holds the other. */
export const distanceBetween = (one: Outline, other: Outline): number => {
  const [ones, others] = [edges(one), edges(other)];
  if (one.some((point) => inside(point, other)) || other.some((point) => inside(point, one))) return 0;
  if (ones.some((edge) => others.some((second) => crosses(edge, second)))) return 0;
  return Math.min(
    ...one.flatMap((point) => others.map((edge) => toSegment(point, edge))),
    ...other.flatMap((point) => ones.map((edge) => toSegment(point, edge))),
  );
};
