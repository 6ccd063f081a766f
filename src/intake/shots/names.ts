import { distance } from 'fastest-levenshtein';
import { isMissingMark } from './cell.ts';
import type { Report } from './collector.ts';
import type { Table, TableRow } from './table.ts';

/** A name as it counts: outer spaces off, inner runs of spaces, no-break ones too, as one. */
export const nameText = (cell: string): string => cell.replace(/\s+/g, ' ').trim();

/** Names of one kind over the whole file. */
export interface Spellings {
  /** Each name as first seen, and as typed there, by its lower-case form. */
  readonly first: Map<string, { readonly name: string; readonly typed: string }>;
  /** Other spellings of a name, with the line of each. */
  readonly others: Map<string, { readonly spelling: string; readonly line: number }>;
}

export const noSpellings = (): Spellings => ({ first: new Map(), others: new Map() });

/** The name in its first spelling; differing case and inner spaces are one name. */
export function firstSpelling(raw: string, line: number, spellings: Spellings): string {
  const name = nameText(raw);
  const key = name.toLowerCase();
  const typed = raw.trim();
  const known = spellings.first.get(key);
  if (known === undefined) {
    spellings.first.set(key, { name, typed });
    return name;
  }
  if (typed !== known.typed && !spellings.others.has(typed))
    spellings.others.set(typed, { spelling: typed, line });
  return known.name;
}

const confusable: Readonly<Record<string, string>> = {
  а: 'a',
  в: 'b',
  е: 'e',
  к: 'k',
  м: 'm',
  н: 'h',
  о: 'o',
  р: 'p',
  с: 'c',
  т: 't',
  у: 'y',
  х: 'x',
  і: 'i',
  ѕ: 's',
  ј: 'j',
  α: 'a',
  β: 'b',
  ε: 'e',
  η: 'h',
  ι: 'i',
  κ: 'k',
  μ: 'm',
  ν: 'n',
  ο: 'o',
  ρ: 'p',
  τ: 't',
  υ: 'y',
  χ: 'x',
  ζ: 'z',
  '0': 'o',
  '1': 'l',
  i: 'l',
};

/** What is left of a name when spaces, punctuation, accents and letters that look alike are levelled. */
function skeleton(name: string): string {
  return [
    ...name
      .toLowerCase()
      .normalize('NFKD')
      .replace(/[^\p{L}\p{N}]/gu, ''),
  ]
    .map((letter) => confusable[letter] ?? letter)
    .join('');
}

/** Two words that differ by a letter too many or by two swapped: a slip rather than another name. */
function isSlip(a: string, b: string): boolean {
  if (!/^\p{L}{4,}$/u.test(a) || !/^\p{L}{4,}$/u.test(b)) return false;
  if (a.length !== b.length) return distance(a, b) === 1;
  const swapped = [...a].toSorted().join('') === [...b].toSorted().join('');
  return swapped && distance(a, b) === 2;
}

function nearlyOne(a: string, b: string): boolean {
  if (skeleton(a) === skeleton(b)) return true;
  const [first, second] = [a.toLowerCase().split(' '), b.toLowerCase().split(' ')];
  if (first.length !== second.length) return false;
  const differing = first.flatMap((word, index) =>
    word === second[index] ? [] : [[word, second[index] ?? ''] as const],
  );
  const [only] = differing;
  return differing.length === 1 && only !== undefined && isSlip(...only);
}

/** How many names are compared with each other; a file with more has other troubles. */
const compared = 200;

/** Says where spellings were merged, and where names that stay apart look alike. */
export function reportNames(who: 'club' | 'hitter', spellings: Spellings, report: Report): void {
  const others = [...spellings.others.values()];
  const [first] = others;
  if (first !== undefined) {
    report(who === 'club' ? 'club-names-merged' : 'hitter-names-merged', {
      line: first.line,
      expected: `one spelling: "${spellings.first.get(nameText(first.spelling).toLowerCase())?.name ?? ''}"`,
      found: others
        .map(({ spelling }) => `"${spelling}"`)
        .slice(0, 10)
        .join(', '),
      cure: `check that these are one ${who}: they differ only in spaces or in capital letters`,
    });
  }
  if (who === 'hitter') return;
  const names = [...spellings.first.values()].map(({ name }) => name).slice(0, compared);
  const alike = names.flatMap((a, index) =>
    names
      .slice(index + 1)
      .filter((b) => nearlyOne(a, b))
      .map((b) => `"${a}" and "${b}"`),
  );
  if (alike.length > 0) {
    report('similar-club-names', {
      expected: 'names that nobody mixes up',
      found: alike.slice(0, 10).join('; '),
      cure: 'check whether these are one club; they are kept apart. If they are one, name both under "match" in the report',
    });
  }
}

/**
 * Names in lines above the headings that hold for blank cells below them: none of the rows that such a line stands
 * above may name another, or the blank could mean either.
 */
export function namesForBlanks(
  { rows }: Table,
  who: 'club' | 'hitter',
  nameOf: (row: TableRow) => string,
): ReadonlySet<string> {
  const stated = (row: TableRow): string => nameText(row.block[who] ?? '');
  const contradicted = new Set(
    rows
      .filter((row) => nameOf(row) !== '' && nameOf(row).toLowerCase() !== stated(row).toLowerCase())
      .map(stated),
  );
  return new Set(rows.map(stated).filter((name) => name !== '' && !contradicted.has(name)));
}

/** Reads a column of names: blanks are filled from above only where that is plainly meant. */
export function readClubs(table: Table, spellings: Spellings, report: Report): readonly (string | null)[] {
  const [index] = table.columns.roles.get('club') ?? [];
  const columnName = index === undefined ? null : (table.rows[0]?.block.headings[index]?.text ?? null);
  const cellOf = ({ cells }: TableRow): string => {
    const cell = index === undefined ? '' : nameText(cells[index] ?? '');
    return isMissingMark(cell) ? '' : cell;
  };
  const holding = namesForBlanks(table, 'club', cellOf);
  const blanks = table.rows.filter((row) => cellOf(row) === '' && row.block.club === null).length;
  const rule = blanks > 0 && 2 * blanks >= table.rows.length;
  let above: string | null = null;
  let filled = 0;
  let firstFilled: number | null = null;
  let aboveBlock = table.rows[0]?.block.headings;
  const clubs = table.rows.map((row) => {
    if (row.block.headings !== aboveBlock) above = null;
    aboveBlock = row.block.headings;
    if (cellOf(row) !== '' && index !== undefined) {
      above = firstSpelling(row.cells[index] ?? '', row.line, spellings);
      return above;
    }
    const { club } = row.block;
    if (club !== null && holding.has(nameText(club))) return firstSpelling(club, row.line, spellings);
    if (index === undefined) return null;
    if (club === null && rule && above !== null) {
      filled += 1;
      firstFilled ??= row.line;
      return above;
    }
    report('club-missing', {
      line: row.line,
      column: index + 1,
      columnName,
      expected: 'the name of the club',
      found:
        club === null ? null : `a blank; the line above the headings says "${club}", other rows name others`,
      cure: 'write the club into that cell, or delete the row and say so in the report',
    });
    return null;
  });
  if (filled > 0 && index !== undefined) {
    report('club-filled-down', {
      line: firstFilled,
      column: index + 1,
      columnName,
      expected: 'the name of the club in every row',
      found: `${filled} blank ${filled === 1 ? 'cell' : 'cells'}`,
      cure: 'check that each name holds for the rows below it, up to the next name',
    });
  }
  return clubs;
}
