import { knownHeadings, type IsNamed } from './headerRow.ts';
import { readRecords } from './records.ts';

interface Delimiter {
  readonly delimiter: string;
  /** A `sep=` line says so. */
  readonly stated: boolean;
  /** Whether a line of headings can be read with it. */
  readonly readable: boolean;
}

/** What a session file may be written with. */
export const delimiters = [',', ';', '\t', '|'] as const;

/** Headings stand near the top: this many characters are looked at. */
const lookedAt = 65_536;

/** The delimiter that a leading `sep=` line states. */
function statedDelimiter(text: string): string | null {
  const stated = /^\s*"?sep=(\\t|.)"?\s*(?:\r\n|\n|\r|$)/i.exec(text)?.[1];
  return stated === '\\t' ? '\t' : (stated ?? null);
}

function mostKnown(sample: string, delimiter: string, isNamed: IsNamed): number {
  let most = 0;
  for (const { cells } of readRecords(sample, delimiter).records)
    most = Math.max(most, knownHeadings(cells, isNamed));
  return most;
}

/** The delimiter that makes the headings readable; a `sep=` line is obeyed. */
export function findDelimiter(text: string, isNamed: IsNamed): Delimiter {
  const sample = text.slice(0, lookedAt);
  const stated = statedDelimiter(text);
  if (stated !== null && stated !== '"') {
    return { delimiter: stated, stated: true, readable: mostKnown(sample, stated, isNamed) > 0 };
  }
  let best: Delimiter = { delimiter: ',', stated: false, readable: false };
  let most = 0;
  for (const delimiter of delimiters) {
    // Where it does not occur a line has one cell, and at most one heading: no more than was found already.
    if (most > 0 && !sample.includes(delimiter)) continue;
    const known = mostKnown(sample, delimiter, isNamed);
    if (known > most) {
      most = known;
      best = { delimiter, stated: false, readable: true };
    }
  }
  return best;
}
