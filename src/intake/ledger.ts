import { z } from 'zod';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import { isRealDate } from './authored/answers.ts';

/** A plan as it stood on the day it was put on record. */
export interface RecordedPlan {
  readonly slug: string;
  readonly date: string;
  /** Hour and minute where the shop is, "14:05"; none in a record of an earlier version. */
  readonly time?: string;
  readonly hash: string;
}

/** A planned test that will not be published, and why. */
export interface DroppedPlan {
  readonly slug: string;
  readonly date: string;
  readonly reason: string;
}

/** One answer of a report as it was printed: what a later change is held against. */
export interface RecordedAnswer {
  readonly metric: string;
  readonly a: string;
  readonly b: string;
  readonly verdict: string;
  readonly credit: string;
  /** The one that was ahead; null where none was. */
  readonly ahead: string | null;
  readonly says: string;
}

/** A published report as it stood on the day of its record. */
export interface ReportRecord {
  readonly date: string;
  /**
   * SHA-256 of all answers as typed, corrections and replies apart. Null in a record of version 1, which held a hash
   * of what the code of its day had made of them: nothing can be held against that.
   */
  readonly typed: string | null;
  /** SHA-256 of the narrative; null in a record of an earlier version. */
  readonly narrative: string | null;
  readonly data: readonly { readonly name: string; readonly sha256: string }[];
  /** How many corrections the report listed. */
  readonly corrections: number;
  readonly answers: readonly RecordedAnswer[];
}

interface RecordedReport {
  readonly slug: string;
  /** The oldest first. */
  readonly records: readonly ReportRecord[];
}

/** `ledger.json`: what was planned, what was published, and what it said then. */
export interface Ledger {
  readonly version: 3;
  readonly plans: readonly RecordedPlan[];
  readonly dropped: readonly DroppedPlan[];
  readonly reports: readonly RecordedReport[];
}

export const emptyLedger: Ledger = { version: 3, plans: [], dropped: [], reports: [] };

const date = z.string().refine(isRealDate, 'a date as year-month-day');
const time = z.string().regex(/^(?:[01]\d|2[0-3]):[0-5]\d$/, 'an hour and minutes');
const text = z.string().min(1, 'a text');
const hash = z.string().regex(/^[0-9a-f]{64}$/, '64 hexadecimal digits');

const recordShape = {
  data: z.array(z.strictObject({ name: text, sha256: hash })),
  corrections: z.int().nonnegative(),
  answers: z.array(
    z.strictObject({
      metric: text,
      a: text,
      b: text,
      verdict: text,
      credit: text,
      ahead: text.nullable(),
      says: text,
    }),
  ),
};

const ledgerOf = <R extends z.ZodType<ReportRecord>>(record: R) => ({
  plans: z.array(z.strictObject({ slug: text, date, time: time.exactOptional(), hash })),
  dropped: z.array(z.strictObject({ slug: text, date, reason: text })),
  reports: z.array(z.strictObject({ slug: text, records: z.array(record) })),
});

const schemas: Readonly<Record<Ledger['version'] | 1 | 2, z.ZodType<Ledger>>> = {
  1: z
    .strictObject({
      version: z.literal(1),
      ...ledgerOf(
        z
          .strictObject({ date, front: hash, ...recordShape })
          .transform(({ front: _, ...rest }): ReportRecord => ({ ...rest, typed: null, narrative: null })),
      ),
    })
    .transform((ledger): Ledger => ({ ...ledger, version: 3 })),
  2: z
    .strictObject({
      version: z.literal(2),
      ...ledgerOf(
        z
          .strictObject({ date, typed: hash.nullable(), ...recordShape })
          .transform((record): ReportRecord => ({ ...record, narrative: null })),
      ),
    })
    .transform((ledger): Ledger => ({ ...ledger, version: 3 })),
  3: z.strictObject({
    version: z.literal(3),
    ...ledgerOf(z.strictObject({ date, typed: hash.nullable(), narrative: hash.nullable(), ...recordShape })),
  }),
};

/** Reads `ledger.json`; null with a problem where it is not what `record` writes. */
export function readLedger(
  file: string,
  json: string,
): { readonly ledger: Ledger | null; readonly problems: readonly Problem[] } {
  const refuse = (
    found: string,
    cure = 'Nobody edits this file by hand: take back its last good version.',
  ): ReturnType<typeof readLedger> => ({
    ledger: null,
    problems: [
      makeProblem(
        'ledger-invalid',
        { file },
        {
          expected: 'the ledger as it is written when plans and reports are put on record',
          found,
          cure,
        },
      ),
    ],
  });
  let tree: unknown;
  try {
    tree = JSON.parse(json);
  } catch {
    return refuse('text that is not JSON');
  }
  const version = versionOf(tree);
  if (version !== null && version > 3)
    return refuse(`version ${version}`, 'Use the version of Straightface that wrote it, or a later one.');
  const read = schemas[version === 1 || version === 2 ? version : 3].safeParse(tree);
  if (read.success) return { ledger: read.data, problems: [] };
  const [issue] = read.error.issues;
  const path = issue?.path.map(String).join('.') ?? '';
  return refuse(path === '' ? 'something else' : `something else at ${path}`);
}

function versionOf(tree: unknown): number | null {
  const read = z.looseObject({ version: z.int() }).safeParse(tree);
  return read.success ? read.data.version : null;
}

/** How many tests were planned and what became of them. */
interface LedgerCount {
  readonly planned: number;
  readonly published: number;
  readonly dropped: readonly DroppedPlan[];
  readonly open: number;
  /** Reports published without a plan on record. */
  readonly unplanned: number;
}

/** A test counts once, however often its plan was changed; one both dropped and published was published. */
export function ledgerCount({ plans, dropped, reports }: Ledger): LedgerCount {
  const planned = new Set(plans.map(({ slug }) => slug));
  const published = new Set(reports.map(({ slug }) => slug));
  const given = dropped.filter(({ slug }) => planned.has(slug) && !published.has(slug));
  const shown = [...published].filter((slug) => planned.has(slug)).length;
  return {
    planned: planned.size,
    published: shown,
    dropped: given,
    open: planned.size - shown - given.length,
    unplanned: published.size - shown,
  };
}
