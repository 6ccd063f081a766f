import { unitNamed } from '../../trade/unitWords.ts';
import type { UnitId } from '../../trade/units.ts';
import { readHeading, type Heading } from './heading.ts';
import { isMissingMark } from './cell.ts';
import { readSignStatement } from './signStatement.ts';
import type { PositiveSide } from './shotFile.ts';

/** Whether a heading is one that the report's front matter names itself. */
export type IsNamed = (heading: string) => boolean;

const plainNumber = /^\s*[+-]?\d[\d.,]*\s*$/;

/**
 * The headings of a record, or null where it is no line of headings: it must name two columns that we know (or be
 * one column wide), at least one of them a metric, and hold no number.
 */
export function readHeaderRow(cells: readonly string[], isNamed: IsNamed): readonly Heading[] | null {
  if (cells.length > 400 || cells.some((cell) => plainNumber.test(cell))) return null;
  const filled = cells.filter((cell) => cell.trim() !== '').length;
  // One cell alone may be a heading, but not a statement such as `Side: left is positive`.
  if (filled === 0 || (filled === 1 && cells.some((cell) => cell.includes(':')))) return null;
  const headings = cells.map(readHeading);
  const named = headings.filter((heading) => isNamed(heading.text)).length;
  const measuring = headings.filter(
    ({ meaning }) => meaning.kind === 'metric' || meaning.kind === 'ambiguous',
  ).length;
  const known = headings.filter(({ meaning }) => meaning.kind !== 'unknown').length + named;
  if (measuring + named === 0 || (known < 2 && filled > 1)) return null;
  while (headings.at(-1)?.text === '') headings.pop();
  return headings;
}

/** How many columns of a record we know; tells which delimiter makes a line readable. */
export function knownHeadings(cells: readonly string[], isNamed: IsNamed): number {
  const headings = readHeaderRow(cells, isNamed);
  if (headings === null) return 0;
  return headings.filter(({ text, meaning }) => meaning.kind !== 'unknown' || isNamed(text)).length;
}

export interface UnitsRowCell {
  readonly unit: UnitId | null;
  readonly positive: PositiveSide | 'contradiction' | null;
}

/** The units of a record that stands under the headings and holds nothing but units; null where it is something else. */
export function readUnitsRow(cells: readonly string[]): readonly UnitsRowCell[] | null {
  let found = 0;
  const row: UnitsRowCell[] = [];
  for (const cell of cells) {
    const text = cell.trim().replace(/^[([{]\s*(.*?)\s*[)\]}]$/, '$1');
    const sign = readSignStatement(text);
    const rest = sign.rest
      .replace(/[()[\]{}]/g, ' ')
      .replace(/[,;/\s]+$/, '')
      .trim();
    const unit = unitNamed(rest);
    if (unit !== null) found += 1;
    else if (
      !isMissingMark(rest) &&
      !/^(?:#|1|units?:?|none|text|no\.?|name|label|id|number|index|count|date|iso|[hms]{1,2}(?::[hms]{1,2})+)$/i.test(
        rest,
      )
    )
      return null;
    row.push({ unit, positive: sign.positive });
  }
  return found > 0 ? row : null;
}
