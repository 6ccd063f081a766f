import type { MetricClass, MetricId } from '../../trade/metrics.ts';
import type { UnitId } from '../../trade/units.ts';
import type { Problem } from '../../problems/problem.ts';

/** One metric's column as the reader understood it. */
export interface ShotColumn {
  readonly metric: MetricId;
  /** The heading as typed. */
  readonly heading: string;
  /** Cell number in the record, counted from 1. */
  readonly column: number;
  readonly unit: UnitId;
  /** The step the file's numbers are written in, canonical unit: one tenth of a yard is 0.09144. */
  readonly step: number;
  readonly class: MetricClass;
  /** Estimated because one number stands on many shots; nobody said so. */
  readonly looksEstimated?: true;
  /** The two readings that its values are made of wherever both are there. */
  readonly from?: readonly [MetricId, MetricId];
}

/** One shot as the file has it; numbers in canonical units, null where the file has no reading. */
export interface ShotRow {
  readonly club: string | null;
  readonly hitter: string | null;
  readonly shotNo: number | null;
  readonly round: number | null;
  /** ISO 8601 text. */
  readonly time: string | null;
  readonly note: string | null;
  /** Marked in the file as not to be used. */
  readonly excluded: boolean;
  readonly warmUp: boolean;
  readonly values: Readonly<Partial<Record<MetricId, number | null>>>;
  readonly line: number;
}

/** A line that is no shot of its own; a duplicate repeats the shot in line `of`. */
type SetAside =
  | { readonly line: number; readonly reason: 'summary' }
  | { readonly line: number; readonly reason: 'duplicate'; readonly of: number };

/** What one CSV file says, with everything that is wrong or worth knowing about it. */
export interface ShotFile {
  readonly file: string;
  readonly rows: readonly ShotRow[];
  readonly columns: Readonly<Partial<Record<MetricId, ShotColumn>>>;
  readonly problems: readonly Problem[];
  /** Lines that were recognised as something else than shots, and why they are not among the rows. */
  readonly setAside: readonly SetAside[];
  /** Days that lines above the headings state, ISO dates. */
  readonly statedDays: readonly string[];
  /** Headings of columns that no metric and no other meaning was found for; they are ignored. */
  readonly unknownHeadings: readonly string[];
}

/** What the report's front matter says about the columns of its files. */
export interface ShotFileOptions {
  readonly columns?: Readonly<Partial<Record<MetricId, ColumnOverride>>>;
  /** Heading of the column that names the contender, where that is not the column headed `Club`. */
  readonly club?: string;
  /** The noun of what the report varies: a column headed so names the contender, before one headed `Club`. */
  readonly varied?: string;
}

export interface ColumnOverride {
  readonly heading: string;
  readonly unit?: UnitId;
  /** Which way the file counts as positive, where that is not the convention of `metrics.ts`. */
  readonly positive?: PositiveSide;
  readonly class?: MetricClass;
}

/** The side that a file counts as positive. */
export type PositiveSide = 'left' | 'right' | 'up' | 'down' | 'toe' | 'heel';
