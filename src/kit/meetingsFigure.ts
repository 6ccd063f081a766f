import { bandOf } from '../charts/bandOf.ts';
import { charts, type FigureId } from '../charts/charts.ts';
import type { ContenderName } from '../charts/contenderName.ts';
import { drawnFigure } from '../charts/drawnFigure.ts';
import type { Figure, FigureHead } from '../charts/figure.ts';
import { gapRow, rowCells, rowsAhead } from '../charts/gapRow.ts';
import { absentChart } from '../charts/madeChart.ts';
import { drawPooledRows } from '../charts/pooledRows.ts';
import { turnedPair } from '../charts/turnedPair.ts';
import type { Interval } from '../findings/findings.ts';
import { dateInWords } from '../prose/date.ts';
import { anotherGolfer } from '../prose/english/charts/hitters.ts';
import { meetingsFinding, meetingsWords, oneReport } from '../prose/english/charts/meetings.ts';
import { whomInRow } from '../prose/english/kit/pooled.ts';
import { counts, type Meeting, type MeetingsOfBuilds } from './pairRecords.ts';

/** *How far apart, report by report?*: each test on one scale, then all combined, then another golfer; words alone for a single one. */
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
    gapRow(name, gap, turned, { metric, telling });
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

// A bar whose difference may have another cause looks like any other, so its name says so.
function rowName(meeting: Meeting): string {
  const { front, locale } = meeting.report.source;
  return `${dateInWords(front.date, locale)}${counts(meeting) ? '' : ', not counted'}`;
}
