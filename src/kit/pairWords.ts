import { bandOf } from '../charts/bandOf.ts';
import type { ContenderName } from '../charts/contenderName.ts';
import { drawnFigure } from '../charts/drawnFigure.ts';
import type { Figure, FigureHead } from '../charts/figure.ts';
import { charts, type FigureId } from '../charts/charts.ts';
import { gapRow, rowCells, rowsAhead } from '../charts/gapRow.ts';
import { absentChart } from '../charts/madeChart.ts';
import { drawPooledRows } from '../charts/pooledRows.ts';
import type { Table } from '../charts/table.ts';
import { turnedPair } from '../charts/turnedPair.ts';
import { isReadingStated } from '../findings/fairness.ts';
import type { Interval } from '../findings/findings.ts';
import { dateInWords } from '../prose/date.ts';
import { sayPair } from '../prose/english/pairInWords.ts';
import { anotherGolfer } from '../prose/english/charts/hitters.ts';
import { meetingsFinding, meetingsWords, oneReport } from '../prose/english/charts/meetings.ts';
import {
  meetingsTableWords,
  sayNotPooled,
  sayOthers,
  sayPooled,
  saysWhetherCounted,
  sayWithoutFirst,
  whomInRow,
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

/** Each test on one scale, then all combined, then another golfer; words alone for a single one. */
export function meetingsFigure(
  { metric: id, meetings, pooled }: MeetingsOfBuilds,
  figureId: Extract<FigureId, `meetings-${number}`>,
): Figure {
  const [newest] = meetings;
  const head: FigureHead = {
    id: figureId,
    chart: 'meetings',
    about:
      newest === undefined
        ? { of: 'report' }
        : { of: 'pair', metric: id, a: newest.pair.a, b: newest.pair.b },
    question: charts.meetings.question,
  };
  if (newest === undefined || meetings.length < 2) return drawnFigure(head, absentChart(head, oneReport));
  const { pair, metric, report } = newest;
  const { telling } = report;
  const turned = turnedPair(pair, metric, telling);
  const place = ({ label }: ContenderName, index: number): ContenderName => ({ label, index });
  const [a, b] = turned.a.label === telling.nameOf(pair.a) ? [0, 1] : [1, 0];
  // One step for all rows: that of the newest report.
  const rowOf = (name: string, gap: { readonly estimate: number | null; readonly ci: Interval | null }) =>
    gapRow(name, gap, turned, metric, telling);
  const { more, ...band } = bandOf(metric, telling);
  const each = meetings.map((meeting) => rowOf(rowName(meeting), meeting.pair));
  const all = pooled.kind === 'none' ? null : rowOf(whomInRow(pooled), pooled);
  const another =
    pooled.kind === 'golfers' && pooled.newGolfer !== null
      ? {
          ...rowOf(anotherGolfer, { estimate: pooled.estimate, ci: pooled.newGolfer }),
          estimate: null,
          figure: '',
        }
      : null;
  const rows = [...each, ...(all === null ? [] : [all])];
  const { opening, tableCaption, tableHead, ...words } = meetingsWords(
    metric,
    { a: turned.a.label, b: turned.b.label, more },
    telling,
  );
  const made = drawPooledRows({
    about: head.about,
    ...words,
    ...band,
    finding: meetingsFinding(
      rowsAhead(each),
      [turned.a.label, turned.b.label],
      id,
      metric.better === 'less' ? 'less' : 'more',
    ),
    description: [
      opening,
      ...rows.map(({ name, told }) => `${name}: ${told}.`),
      ...(another === null ? [] : [`${another.name}: ${another.words}.`]),
    ].join(' '),
    table: {
      caption: tableCaption,
      head: tableHead,
      rows: rowCells(rows, another),
    },
    a: place(turned.a, a),
    b: place(turned.b, b),
    each,
    counted: 'reports',
    pooled: all,
    another,
  });
  return drawnFigure(head, made);
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

// A bar whose difference may have another cause looks like any other, so its name says so.
function rowName(meeting: Meeting): string {
  const { front, locale } = meeting.report.source;
  return `${dateInWords(front.date, locale)}${counts(meeting) ? '' : ', not counted'}`;
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
