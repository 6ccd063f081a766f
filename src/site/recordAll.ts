import type { Ledger, RecordedPlan, ReportRecord } from '../intake/ledger.ts';
import type { Problem } from '../problems/problem.ts';
import { answersOf } from '../prose/movedAnswers.ts';
import { changesSince, contentHashes, latestRecord, narrativeHash, planHash } from './ledger.ts';
import type { MadeReport } from './makeReport.ts';
import { underPresentNames } from './ownLedger.ts';
import type { WrittenReport } from './writtenReport.ts';

interface Recordable extends MadeReport {
  readonly written: WrittenReport;
}

/** When something is put on record, where the shop is: a day (ISO 8601), and hour and minute where a clock was asked. */
interface Moment {
  readonly today: string;
  readonly time?: string;
}

/** The ledger after today's records, what was added in words, and what may not be recorded as it stands. */
interface Recorded {
  readonly next: Ledger;
  readonly lines: readonly string[];
  /** Reports that are on record for the first time and do not say on which day they were published. */
  readonly undated: readonly string[];
  readonly refused: readonly Problem[];
}

/**
 * Adds the plan of every report that has one, and every published report that is new or was corrected. A published
 * report that was changed without a correction is refused: recording it would make the change disappear.
 */
export function recordAll(before: Ledger, reports: readonly Recordable[], now: Moment): Recorded {
  const { today } = now;
  const sources = reports.flatMap(({ written: { source } }) => (source === null ? [] : [source]));
  const ledger = underPresentNames(sources, before);
  const plans = reports.flatMap(({ written }) => newPlan(ledger, written, now));
  const records = reports.flatMap((made) => newRecord(ledger, made, today));
  const slugs = [...new Set([...ledger.reports.map(({ slug }) => slug), ...records.map(({ slug }) => slug)])];
  return {
    next: {
      ...ledger,
      plans: [...ledger.plans, ...plans],
      reports: slugs.toSorted().map((slug) => ({
        slug,
        records: [
          ...(ledger.reports.find((report) => report.slug === slug)?.records ?? []),
          ...records.filter((own) => own.slug === slug).map(({ record }) => record),
        ],
      })),
    },
    lines: [
      ...plans.map(({ slug }) => `${slug}: plan recorded`),
      ...records.map(({ slug, says }) => `${slug}: ${says}`),
    ],
    undated: records
      .filter(({ says, dated }) => says === 'published report recorded' && !dated)
      .map(({ slug }) => slug),
    refused: reports.flatMap(({ problems }) =>
      problems.filter(({ kind }) => kind === 'changed-without-correction' || kind === 'file-unreadable'),
    ),
  };
}

/**
 * A plan needs no shots yet, only front matter that can be read; an unchanged plan keeps its first day. What is put
 * on record after the session was no plan: only tests that turned out well would be found there.
 */
function newPlan(ledger: Ledger, { slug, source }: WrittenReport, { today, time }: Moment): RecordedPlan[] {
  const hash = source === null ? null : planHash(source.front);
  if (source === null || hash === null || source.front.date < today) return [];
  if (ledger.plans.some((plan) => plan.slug === slug && plan.hash === hash)) return [];
  return [{ slug, date: today, ...(time === undefined ? {} : { time }), hash }];
}

interface NewRecord {
  readonly slug: string;
  readonly says:
    | 'published report recorded'
    | 'correction recorded'
    | 'recorded again, as typed'
    | 'narrative recorded again';
  readonly record: ReportRecord;
  /** Whether it says on which day it was published. */
  readonly dated: boolean;
}

function newRecord(ledger: Ledger, { report, problems }: Recordable, today: string): NewRecord[] {
  if (report === null || report.source.front.status !== 'published') return [];
  if (problems.some(({ kind }) => kind === 'changed-without-correction')) return [];
  const { source, telling } = report;
  const { slug, front } = source;
  const latest = latestRecord(slug, ledger);
  const corrections = front.corrections.length;
  const known = latest !== null && latest.typed !== null;
  const narrative = narrativeHash(source);
  const same = known && changesSince(source, latest).length === 0 && corrections === latest.corrections;
  if (same && narrative === latest.narrative) return [];
  const { typed, data } = contentHashes(source);
  // In the order in which a ledger is read: the same content is the same bytes.
  const record = { date: today, typed, narrative, data, corrections, answers: answersOf(telling) };
  const says =
    latest === null
      ? 'published report recorded'
      : corrections > latest.corrections
        ? 'correction recorded'
        : same
          ? 'narrative recorded again'
          : 'recorded again, as typed';
  return [{ slug, says, record, dated: front.published !== null }];
}
