import { notRecorded } from '../disclosureGroup.ts';
import type { Price } from '../../intake/authored/contender.ts';
import { metrics, type MetricClass, type MetricId } from '../../trade/metrics.ts';
import { dateInWords } from '../date.ts';
import { averageLimits, printAverage, printSize, type Printing } from '../printSteps.ts';
import { formatNumber } from '../numbers.ts';
import { shortUnit, toReader, unitFor, withUnit } from '../readerUnits.ts';
import type { AverageCell, SideBySide, SideBySideRow } from '../sideBySide.ts';
import { printingFor, type Telling } from '../telling.ts';
import { capitalised, counted, countWord, listed } from '../words.ts';
import { asSeen, isDifference, mainWords, seenWords } from './rowJudged.ts';
import { sayExplored } from './explored.ts';
import { moneyWords } from './price.ts';

/** What one contender has in one row. */
interface ToldCell {
  readonly value: string;
  /** Smaller, after the value: "sd 5.6". */
  readonly beside: string | null;
  /** Smaller, each on a line of its own: the likely range, how many readings. */
  readonly under: readonly string[];
}

/** One row of the table in words. */
interface ToldRow {
  readonly name: string;
  /** Smaller, after the name: the unit, a date. */
  readonly aside: string | null;
  readonly cells: readonly ToldCell[];
  /** What was judged of the differences in this row, a line each; empty where there is nothing to say. */
  readonly judged: readonly string[];
  /** `main`: a main measure; `seen`: what its words say was not tested for; `differs`: an item that is not the same for all. */
  readonly weight: 'main' | 'seen' | 'differs' | 'plain';
}

export interface ToldSideBySide {
  readonly caption: string;
  readonly names: readonly string[];
  readonly rows: readonly ToldRow[];
  /** Sentences under the table. */
  readonly notes: readonly string[];
}

/** The table of all contenders in words and printed numbers. */
export function tellSideBySide(table: SideBySide, telling: Telling, locale: string): ToldSideBySide {
  const { ids, rows, golfers, alike, explored } = table;
  const anySeen = rows.some(isSeen);
  return {
    caption: captionOf(golfers, telling),
    names: ids.map(telling.nameOf),
    rows: rows.map((row) => rowWords(row, telling, locale)),
    notes: [
      ...(golfers > 1 ? [severalGolfers(telling)] : []),
      ...notMeasured(rows),
      ...(anySeen ? [sayExplored(explored)] : []),
      ...(alike.length === 0 ? [] : [`The same for all: ${listed(alike)}.`]),
    ],
  };
}

function captionOf(golfers: number, { noun }: Telling): string {
  return golfers > 1
    ? `Averages of all shots of ${counted(golfers, 'golfer')}`
    : `Averages, under each its likely range (95% confidence, each ${noun} by itself); sd is the standard deviation of single shots`;
}

function severalGolfers({ nouns }: Telling): string {
  return `Averages depend on who hit, so none has a likely range: the ${nouns} are compared golfer by golfer, and a difference need not be one average less another.`;
}

/** "Calculated, not measured: carry and apex."; empty where all was measured. */
function notMeasured(rows: readonly SideBySideRow[]): readonly string[] {
  const of = (wanted: MetricClass): readonly string[] =>
    rows.flatMap((row) => (row.kind === 'measure' && row.class === wanted ? [metrics[row.metric].name] : []));
  const [modelled, estimated] = [of('modelled'), of('estimated')];
  return [
    ...(modelled.length === 0 ? [] : [`Calculated, not measured: ${listed(modelled)}.`]),
    ...(estimated.length === 0 ? [] : [`Estimated, not measured: ${listed(estimated)}.`]),
  ];
}

/** Whether a row tells a difference that the test did not set out to check. */
function isSeen(row: SideBySideRow): boolean {
  if (row.kind === 'off-line') return row.nearer.length > 0;
  return row.kind === 'measure' && row.role === 'exploratory' && row.seen.some(isDifference);
}

const plain = (value: string): ToldCell => ({ value, beside: null, under: [] });

function rowWords(row: SideBySideRow, telling: Telling, locale: string): ToldRow {
  const weight = isSeen(row) ? 'seen' : 'plain';
  switch (row.kind) {
    case 'shots':
      return {
        name: 'Shots',
        aside: null,
        cells: row.cells.map(({ counted: shots, leftOut }) => ({
          ...plain(String(shots)),
          under: leftOut === 0 ? [] : [`${countWord(leftOut)} more left out`],
        })),
        judged: [],
        weight,
      };
    case 'measure': {
      const printing = printingFor(row.metric, telling);
      return {
        name: capitalised(metrics[row.metric].name),
        aside: asideOf(row.metric, telling),
        cells: row.cells.map((cell) => averageCell(cell, printing)),
        judged:
          row.role === 'primary'
            ? mainWords(row.seen, printing, telling)
            : seenWords(row.seen, row.metric, telling),
        weight: row.role === 'primary' ? 'main' : weight,
      };
    }
    case 'off-line': {
      const lane = formatNumber(toReader(row.laneM, 'side', telling.system), 0);
      return {
        name: `Within ${withUnit(lane, unitFor('side', telling.system))}`,
        aside: 'of the line',
        cells: row.cells.map(({ within, of }) => plain(`${within} of ${of}`)),
        judged: asSeen(
          row.nearer.map(
            ({ nearer, farther }) => `${telling.the(nearer)} nearer the line than ${telling.the(farther)}`,
          ),
        ),
        weight,
      };
    }
    case 'price':
      return priceRow(row.cells, locale);
    case 'supplied':
      return {
        name: 'Supplied by',
        aside: null,
        cells: row.cells.map(plain),
        judged: [],
        weight: row.differs ? 'differs' : 'plain',
      };
    case 'build':
      return {
        name: capitalised(row.item),
        aside: null,
        cells: row.cells.map((value) => plain(value ?? notRecorded)),
        judged: [],
        weight: row.differs ? 'differs' : 'plain',
      };
  }
}

/** "yd, right +": the unit, and which side of 0 is which. */
function asideOf(metric: MetricId, { system }: Telling): string | null {
  const parts = [shortUnit(unitFor(metric, system)), signWords(metric)].filter((part) => part !== '');
  return parts.length === 0 ? null : parts.join(', ');
}

/** What a positive number means, where the name does not tell. */
function signWords(metric: MetricId): string {
  switch (metrics[metric].positive) {
    case 'right of the target line':
      return 'right +';
    case 'towards the toe':
      return 'toe +';
    case 'up':
      return metrics[metric].delivery ? 'up +' : '';
    case 'down':
    case null:
      return '';
  }
}

function averageCell(cell: AverageCell | null, printing: Printing): ToldCell {
  if (cell === null) return plain(notRecorded);
  const { mean, ci, sd, readings } = cell;
  return {
    value: printAverage(mean, printing),
    beside: sd === null ? null : `sd ${printSize(sd, printing)}`,
    under: [
      ...(ci === null ? [] : [limits(ci, printing)]),
      ...(readings === null ? [] : [counted(readings, 'reading')]),
    ],
  };
}

/** "169–176"; a dash beside a minus sign would be misread. */
function limits(ci: NonNullable<AverageCell['ci']>, printing: Printing): string {
  const [lower, upper] = averageLimits(ci, printing);
  return ci[0] < 0 ? `${lower} to ${upper}` : `${lower}–${upper}`;
}

/** Prices with their day, once where it is the same for all. */
function priceRow(cells: readonly (Price | null)[], locale: string): ToldRow {
  const days = [...new Set(cells.flatMap((price) => price?.on ?? []))];
  const [day] = days;
  return {
    name: 'Price',
    aside: days.length === 1 && day !== undefined ? dateInWords(day, locale) : null,
    cells: cells.map((price) =>
      price === null
        ? plain(notRecorded)
        : {
            ...plain(moneyWords(price.amount, price.currency, locale)),
            under: days.length > 1 ? [dateInWords(price.on, locale)] : [],
          },
    ),
    judged: [],
    weight: 'plain',
  };
}
