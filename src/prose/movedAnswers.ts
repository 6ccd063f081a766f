import { isGap } from '../findings/verdict.ts';
import type { RecordedAnswer, ReportRecord } from '../intake/ledger.ts';
import { primaryMetrics } from './answers.ts';
import { sayPair } from './english/pairInWords.ts';
import { pairAnswer } from './pairAnswer.ts';
import type { Telling } from './telling.ts';

/** An answer that is not what it was. */
export interface MovedAnswer {
  /** The day on which the old answer was put on record. */
  readonly since: string;
  readonly then: string;
  /** Null where the question is no longer asked. */
  readonly now: string | null;
}

/** The primary answers of a report, for its record; what an older record says is quoted as it stands. */
export function answersOf(telling: Telling): readonly RecordedAnswer[] {
  return primaryMetrics(telling.findings).flatMap((metric) =>
    metric.pairs.map((pair) => ({
      metric: metric.id,
      a: pair.a,
      b: pair.b,
      verdict: pair.verdict,
      credit: pair.credit,
      ahead: isGap(pair.verdict) ? pair.ahead : null,
      says: sayPair(pairAnswer(pair, metric, telling.findings.design), telling),
    })),
  );
}

/**
 * Every answer that moved from one record to the next, and from the last to now; the newest first. A new wording of
 * the same answer is no move.
 */
export function movedAnswers(records: readonly ReportRecord[], telling: Telling): readonly MovedAnswer[] {
  const now = answersOf(telling);
  return records
    .flatMap((record, index) => movesBetween(record, records[index + 1]?.answers ?? now))
    .toSorted((x, y) => (x.since < y.since ? 1 : x.since > y.since ? -1 : 0));
}

function movesBetween({ date, answers }: ReportRecord, later: readonly RecordedAnswer[]): MovedAnswer[] {
  return answers.flatMap((then): MovedAnswer[] => {
    const now = later.find(({ metric, a, b }) => metric === then.metric && a === then.a && b === then.b);
    if (now === undefined) return [{ since: date, then: then.says, now: null }];
    const same = now.verdict === then.verdict && now.credit === then.credit && now.ahead === then.ahead;
    return same ? [] : [{ since: date, then: then.says, now: now.says }];
  });
}
