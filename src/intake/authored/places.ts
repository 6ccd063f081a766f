import { isMap, isScalar, isSeq, type Document, type LineCounter, type Node } from 'yaml';
import type { Place } from '../../problems/problem.ts';
import { dotted, type Path } from './tree.ts';

/**
 * Where the value (or the key) at a path stands. A path that does not exist gives the place of its nearest parent,
 * and the path itself as `columnName`, so that a missing key can be named where it belongs.
 */
export type PlaceOf = (path: Path, part?: 'key' | 'value') => Place;

interface Found {
  readonly key: number;
  readonly value: number;
}

/** Offsets of the value at `path` and of its key, or of the deepest parent that is there. */
function find(root: Node | null, path: Path): Found {
  let node: unknown = root;
  // The whole document is named by the line on which it opens.
  let found: Found = { key: 0, value: 0 };
  for (const step of path) {
    if (isMap(node)) {
      const pair = node.items.find((item) => isScalar(item.key) && String(item.key.value) === String(step));
      if (pair === undefined || !isScalar(pair.key)) return { key: found.key, value: found.key };
      const key = pair.key.range?.[0] ?? found.key;
      const value = pair.value as Node | null;
      const blank = value === null || (isScalar(value) && value.value === '');
      found = { key, value: blank ? key : (value.range?.[0] ?? key) };
      node = value;
    } else if (isSeq(node)) {
      const item = node.items[Number(step)] as Node | undefined;
      if (item === undefined) return { key: found.key, value: found.key };
      const at = item.range?.[0] ?? found.key;
      found = { key: at, value: at };
      node = item;
    } else return { key: found.key, value: found.key };
  }
  return found;
}

/** The places of a parsed document whose text begins at the first line of `file`. */
export function placesOf(file: string, document: Document, lines: LineCounter): PlaceOf {
  return (path, part = 'value') => {
    const columnName = path.length === 0 ? null : dotted(path);
    const found = find(document.contents, path);
    const { line, col } = lines.linePos(part === 'key' ? found.key : found.value);
    return { file, line: Math.max(line, 1), column: Math.max(col, 1), columnName };
  };
}

/** Places for a file that could not be read as YAML: all of them its first line. */
export function firstLine(file: string): PlaceOf {
  return (path) => ({ file, line: 1, column: 1, columnName: path.length === 0 ? null : dotted(path) });
}
