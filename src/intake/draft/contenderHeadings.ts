import { decodeBytes } from '../shots/bytes.ts';
import { findDelimiter } from '../shots/delimiter.ts';
import { readHeaderRow } from '../shots/headerRow.ts';
import { readRecords } from '../shots/records.ts';

/** The headings, as typed, under which a file may name what was hit. */
interface ContenderHeadings {
  readonly club: string | null;
  /** Balls, shafts and the like. */
  readonly parts: readonly string[];
}

/** Headings stand near the top: so many bytes are looked at. */
const lookedAt = 65_536;

export function contenderHeadings(bytes: Uint8Array): ContenderHeadings {
  const { text } = decodeBytes(bytes.subarray(0, lookedAt));
  const named = (): boolean => false;
  const { records } = readRecords(text, findDelimiter(text, named).delimiter);
  for (const { cells } of records) {
    const headings = readHeaderRow(cells, named);
    if (headings === null) continue;
    const under = (wanted: 'club' | 'part'): string[] =>
      headings.flatMap(({ text: heading, meaning }) =>
        meaning.kind === 'role' && meaning.role === wanted ? [heading] : [],
      );
    return { club: under('club')[0] ?? null, parts: under('part') };
  }
  return { club: null, parts: [] };
}

const nouns = ['head', 'shaft', 'ball', 'grip', 'grooves', 'loft'] as const;

/** The noun of what a column under such a heading varies; null where the heading leaves it open. */
export function nounIn(heading: string): string | null {
  const words = heading.toLowerCase().split(/[^a-z]+/);
  return nouns.find((noun) => words.includes(noun)) ?? null;
}
