import { at } from '../../stats/at.ts';
import { distance } from 'fastest-levenshtein';
import { writtenOut } from '../../trade/headingWords.ts';
import { metricIds, metrics, type MetricId } from '../../trade/metrics.ts';
import { units } from '../../trade/units.ts';
import type { Report } from './collector.ts';
import type { Heading } from './heading.ts';
import type { IsNamed } from './headerRow.ts';
import type { Block } from './layout.ts';
import type { ShotFileOptions } from './shotFile.ts';

/** Share of the filled cells that must be numbers: a column of words is no metric. */
const mostlyNumbers = 0.8;
/** Enough to see what a column holds. */
const rowsLookedAt = 200;
const numeral = /^[+\-−]?\d[\d.,\s]*\s*(?:[°º%]|[a-z/]{1,4})?\s*[LR]?$/i;
/** Words that make another thing of a reading: what was aimed at, what is averaged, where on the face. */
const ofOther =
  /\b(?:target|goal|ideal|optimal|optimum|average|avg|mean|normali[sz]ed|std|dev|index|score|handicap)\b/i;

/**
 * A column that is not used although its heading and its numbers look like a metric that the file has nowhere else: a
 * warning with the line of the report that would read it.
 */
export function reportUnusedColumns(
  blocks: readonly Block[],
  isNamed: IsNamed,
  { columns = {} }: ShotFileOptions,
  report: Report,
): void {
  const there = new Set<MetricId>([
    ...metricIds.filter((id) => columns[id] !== undefined),
    ...blocks.flatMap(({ headings }) =>
      headings.flatMap(({ meaning }) => (meaning.kind === 'metric' ? [meaning.metric] : [])),
    ),
  ]);
  const told = new Set<string>();
  for (const block of blocks) {
    for (const [index, heading] of block.headings.entries()) {
      const { text, meaning } = heading;
      if (meaning.kind !== 'unknown' || isNamed(text) || told.has(text)) continue;
      const metric = holdsNumbers(block, index) ? metricLike(heading, there) : null;
      if (metric === null) continue;
      told.add(text);
      const { name } = metrics[metric];
      report('column-not-used', {
        line: block.line,
        column: index + 1,
        columnName: text,
        expected: `a heading that names one metric of the trade, such as ${at(metrics[metric].headings, 0)}`,
        found: text,
        cure: `if it is ${name}, write in report.md: columns: {${metric}: ${JSON.stringify(text)}}; if it is something else, nothing need be done`,
      });
    }
  }
}

function holdsNumbers(block: Block, index: number): boolean {
  const cells = block.rows
    .slice(0, rowsLookedAt)
    .map(({ cells: own }) => (own[index] ?? '').trim())
    .filter((cell) => cell !== '');
  return (
    cells.length > 0 && cells.filter((cell) => numeral.test(cell)).length >= mostlyNumbers * cells.length
  );
}

const wordsOf = (phrase: string): readonly string[] =>
  (writtenOut(phrase) ?? phrase)
    .toLowerCase()
    .replace(/[([{].*$/, '')
    .split(/[^\p{L}]+/u)
    .filter((word) => word.length > 2);

/** The metric not yet in the file whose words a heading shares most of, by the unit where it states one. */
function metricLike({ text, unit }: Heading, there: ReadonlySet<MetricId>): MetricId | null {
  if (ofOther.test(text)) return null;
  const own = wordsOf(text.replace(/([a-z])([A-Z])/g, '$1 $2'));
  if (own.every((word) => common.test(word))) return null;
  const ranked = metricIds
    .filter((id) => unit === null || units[unit].dimensions.includes(metrics[id].dimension))
    .map((id) => ({ id, shared: Math.max(...metrics[id].headings.map((phrase) => sharedPart(own, phrase))) }))
    .filter(({ shared }) => shared >= leastShared)
    .toSorted((a, b) => b.shared - a.shared);
  const [best] = ranked;
  return best === undefined || there.has(best.id) ? null : best.id;
}

const leastShared = 0.5;

/** Words of so many headings that they alone make none. */
const common =
  /^(?:swing|impact|club|ball|rate|point|head|strike|total|side|vertical|horizontal|time|max|maximum|initial|start|low|back|shot|of|to)$/;

/** How much of two phrases is the same words, or words but for a slip, 1 where all are; 0 where only common words are. */
function sharedPart(own: readonly string[], phrase: string): number {
  const other = wordsOf(phrase);
  const shared = own.filter((word) => other.some((known) => isSameWord(word, known)));
  return shared.every((word) => common.test(word)) ? 0 : (2 * shared.length) / (own.length + other.length);
}

const isSameWord = (word: string, known: string): boolean =>
  word === known || (word.length >= 4 && known.length >= 4 && distance(word, known) === 1);
