import type { Spot } from './signs.ts';

/** A place on the edge between two neighbours of a grid: its name, and where it lies in columns and rows. */
interface Crossing extends Spot {
  readonly key: string;
}

/** Rows of values, all as long. */
export type Grid = readonly (readonly number[])[];

const valueAt = (grid: Grid, column: number, row: number): number => grid[row]?.[column] ?? Number.NaN;

/** Where the edge from one grid point to the next crosses `level`; null if both lie on one side. */
const crossing = (
  grid: Grid,
  level: number,
  [column, row]: readonly [number, number],
  along: 'column' | 'row',
): Crossing | null => {
  const [nextColumn, nextRow] = along === 'column' ? [column + 1, row] : [column, row + 1];
  const [here, there] = [valueAt(grid, column, row), valueAt(grid, nextColumn, nextRow)];
  if (here <= level === there <= level) return null;
  const share = (level - here) / (there - here);
  return {
    key: `${column} ${row} ${along}`,
    x: column + (nextColumn - column) * share,
    y: row + (nextRow - row) * share,
  };
};

/** The pieces of contour within one cell: none, one, or two at a saddle, where the middle of the cell decides. */
const piecesOf = (
  grid: Grid,
  level: number,
  column: number,
  row: number,
): readonly (readonly Crossing[])[] => {
  const edges = [
    crossing(grid, level, [column, row], 'column'),
    crossing(grid, level, [column + 1, row], 'row'),
    crossing(grid, level, [column, row + 1], 'column'),
    crossing(grid, level, [column, row], 'row'),
  ];
  const found = edges.filter((edge) => edge !== null);
  if (found.length < 4) return found.length === 2 ? [found] : [];
  const corners = [
    [0, 0],
    [1, 0],
    [0, 1],
    [1, 1],
  ].map(([x = 0, y = 0]) => valueAt(grid, column + x, row + y));
  const middle = corners.reduce((sum, value) => sum + value, 0) / 4;
  const [low, right, high, left] = found;
  if (low === undefined || right === undefined || high === undefined || left === undefined) return [];
  // Where the middle lies on the side of the first corner, the line keeps that corner joined to the opposite one.
  return (corners[0] ?? 0) <= level === middle <= level
    ? [
        [low, right],
        [high, left],
      ]
    : [
        [low, left],
        [right, high],
      ];
};

/**
 * Lines along which a grid of values crosses `level`, in columns and rows from its first point, straight between neighbours
 * (marching squares). A line that closes ends where it began; one that leaves the grid ends at its edge.
 */
export const contourLines = (grid: Grid, level: number): readonly (readonly Spot[])[] => {
  const columns = grid[0]?.length ?? 0;
  const pieces = grid
    .slice(1)
    .flatMap((_, row) =>
      Array.from({ length: Math.max(0, columns - 1) }, (_unused, column) =>
        piecesOf(grid, level, column, row),
      ).flat(),
    );
  const links = new Map<string, Crossing[]>();
  for (const [start, end] of pieces) {
    if (start === undefined || end === undefined) continue;
    links.set(start.key, [...(links.get(start.key) ?? []), end]);
    links.set(end.key, [...(links.get(end.key) ?? []), start]);
  }
  const places = new Map(pieces.flat().map((place) => [place.key, place]));
  const done = new Set<string>();
  const follow = (first: Crossing): readonly Spot[] => {
    const line: Crossing[] = [];
    for (let at: Crossing | undefined = first; at !== undefined;) {
      line.push(at);
      done.add(at.key);
      at = links.get(at.key)?.find(({ key }) => !done.has(key));
    }
    const closes = line.length > 2 && links.get(first.key)?.some(({ key }) => key === line.at(-1)?.key);
    return [...line, ...(closes ? [first] : [])].map(({ x, y }) => ({ x, y }));
  };
  // Open lines first, from their ends; what is left then closes.
  const ends = [...places.values()].filter(({ key }) => links.get(key)?.length === 1);
  return [...ends, ...places.values()].flatMap((place) => (done.has(place.key) ? [] : [follow(place)]));
};

/** The outline of all that is no more than a level, in columns and rows from the first point. */
interface Outline {
  /** Where the level is crossed. */
  readonly crossed: readonly (readonly Spot[])[];
  /** Along the edge of the grid, beyond which nothing was worked out. */
  readonly cut: readonly (readonly Spot[])[];
}

/** What lies round the grid is taken to be over any level, so that every line closes, in part along the grid's edge. */
export const outlineWithin = (grid: Grid, level: number): Outline => {
  const [last, bottom] = [(grid[0]?.length ?? 0) - 1, grid.length - 1];
  const over = Number.MAX_VALUE / 4;
  const ring = Array.from({ length: last + 3 }, () => over);
  const ringed = [ring, ...grid.map((row) => [over, ...row, over]), ring];
  const inGrid = (value: number, most: number): number => Math.min(Math.max(value - 1, 0), most);
  const crossed: (readonly Spot[])[] = [];
  const cut: (readonly Spot[])[] = [];
  for (const line of contourLines(ringed, level)) {
    const spots = line.map(({ x, y }) => ({ x: inGrid(x, last), y: inGrid(y, bottom) }));
    const onEdge = (at: number): boolean => {
      const [one, next] = [spots[at], spots[at + 1]];
      if (one === undefined || next === undefined) return false;
      const [alongX, alongY] = [one.x === next.x, one.y === next.y];
      return (alongX && (one.x === 0 || one.x === last)) || (alongY && (one.y === 0 || one.y === bottom));
    };
    for (let at = 0; at < spots.length - 1;) {
      const edge = onEdge(at);
      let end = at + 1;
      while (end < spots.length - 1 && onEdge(end) === edge) end += 1;
      (edge ? cut : crossed).push(spots.slice(at, end + 1));
      at = end;
    }
  }
  return { crossed, cut };
};
