import type { Table } from '../charts/table.ts';
import { isReadingStated } from '../findings/fairness.ts';
import { dateInWords } from '../prose/date.ts';
import { sayPair } from '../prose/english/pairInWords.ts';
import {
  meetingsTableWords,
  sayNotPooled,
  sayOthers,
  sayPooled,
  saysWhetherCounted,
  sayWithoutFirst,
} from '../prose/english/kit/pooled.ts';
import { standingWords } from '../prose/english/kit/standing.ts';
import { golfersAndShots, readingWords } from '../prose/english/kit/whoAndHow.ts';
import { pairAnswer } from '../prose/pairAnswer.ts';
import { pooledAnswer, towards } from '../prose/pooledAnswer.ts';
import { capitalised } from '../prose/words.ts';
import { counts, type Meeting, type MeetingsOfBuilds } from './pairRecords.ts';
import { countsIn } from './whoAndHow.ts';

/** What the tests of one group say together, in sentences; why they cannot be combined, where they cannot; nothing of one. */
export function pooledSentences({ meetings, pooled }: MeetingsOfBuilds): readonly string[] {
  const [newest] = meetings;
  if (newest === undefined) return [];
  const { pair, metric, report } = newest;
  const { telling } = report;
  if (pooled.kind === 'none')
    return [
      sayNotPooled(pooled, meetings.length, meetings.filter((meeting) => !counts(meeting)).length),
    ].filter((words) => words !== '');
  const answer = pooledAnswer(pooled, pair, metric);
  const told = sayPooled(pooled, answer, telling);
  if (pooled.kind === 'one-party') return [told, sayOthers(pooled, null, answer, telling)];
  const { newGolfer, withoutFirst } = pooled;
  const another =
    newGolfer === null
      ? null
      : towards({ estimate: pooled.estimate, ci: newGolfer }, pooled.ahead, metric.better);
  return [
    told,
    sayOthers(pooled, another, answer, telling),
    sayWithoutFirst(withoutFirst === null ? null : pooledAnswer(withoutFirst, pair, metric), telling),
  ];
}

/** One test's own answer: "Hit 10 June 2026. Alder carried farther than Birch: about 9 yards, likely 6 to 12." */
export function meetingWords({ report, pair, metric }: Meeting): string {
  const { front } = report.source;
  return [
    `Hit ${dateInWords(front.date, report.source.locale)}.`,
    standingWords(report.source),
    sayPair(pairAnswer(pair, metric, report.findings.design), report.telling),
  ]
    .filter((words) => words !== '')
    .join(' ');
}

/** One row a test: who hit, where, in front of what, and of several whether it counts; `group` tells tables of a page apart. */
export function meetingsTable({ meetings, pooled }: MeetingsOfBuilds, group: string): Table {
  const { caption, head, combined, notRecorded } = meetingsTableWords;
  const several = meetings.length > 1;
  return {
    caption: caption(group),
    head: several ? [...head, combined] : head,
    rows: meetings.map((meeting) => {
      const { report, metric } = meeting;
      const { front } = report.source;
      const monitor = capitalised(front.conditions.monitor?.kind ?? notRecorded);
      return [
        `${front.title}, ${dateInWords(front.date, report.source.locale)}`,
        golfersAndShots(report.telling, countsIn(report, metric)),
        front.conditions.place ?? notRecorded,
        `${monitor}. ${readingWords([metric], (id) => isReadingStated(front, id))}`,
        front.conditions.monitor?.normalisedTo ?? notRecorded,
        ...(several ? [saysWhetherCounted(whetherCounted(meeting), pooled.kind !== 'none')] : []),
      ];
    }),
  };
}

function whetherCounted(meeting: Meeting): Parameters<typeof saysWhetherCounted>[0] {
  if (counts(meeting)) return 'counts';
  if (meeting.report.source.front.status === 'superseded') return 'replaced';
  if (meeting.repeats) return 'repeats';
  return meeting.pair.status === 'not-judged' ? 'not-judged' : 'open';
}
