import type { Interval, MetricFindings, PairFindings } from '../findings/findings.ts';
import type { ContenderName } from '../charts/apartInput.ts';
import { bandOf } from '../charts/bandOf.ts';
import { absentFigure, type Figure, type FigureHead, type Table } from '../charts/figure.ts';
import { figureTraits } from '../charts/figureTraits.ts';
import { gapRow } from '../charts/gapRow.ts';
import { pooledRowsChart } from '../charts/pooledRows.ts';
import { turnedPair } from '../charts/turnedPair.ts';
import { dateInWords } from '../prose/date.ts';
import { anotherGolfer } from '../prose/english/charts/hitters.ts';
import { meetingsWords } from '../prose/english/charts/meetings.ts';
import { notDrawn } from '../prose/english/charts/notDrawn.ts';
import { gapNumbers, pairSentence } from '../prose/pairSentence.ts';
import { capitalised, counted, countWord } from '../prose/words.ts';
import { fewestForNewGolfer } from '../findings/thresholds.ts';
import { counts, type Meeting, type MeetingsOfBuilds } from './pairRecords.ts';
import { golfersAndShots, readingWords, standing } from './whoAndHow.ts';

/** A gap that no single report has, in the words and units of the newest report. */
interface Together {
  readonly pair: PairFindings;
  readonly metric: MetricFindings;
}

type Pooled = Exclude<MeetingsOfBuilds['pooled'], { kind: 'none' }>;

function together(
  { pair, metric }: Meeting,
  { estimate, ci, verdict, status, ahead }: Pick<Pooled, 'estimate' | 'ci' | 'verdict' | 'status' | 'ahead'>,
): Together {
  return {
    // How many shots one report has says nothing of several: no "first look".
    metric: { ...metric, byContender: [] },
    pair: {
      ...pair,
      estimate,
      ci,
      verdict,
      status,
      ahead: ahead === null ? null : pair[ahead],
      firstLook: false,
      level: 0.95,
      p: null,
      method: null,
      credit: 'contender',
      overlays: [],
      holds: [],
    },
  };
}

/** What the reports of one group say together, in sentences; why they cannot be put together, where they cannot. */
export function pooledSentences({ meetings, pooled }: MeetingsOfBuilds): readonly string[] {
  const [newest] = meetings;
  if (newest === undefined) return [];
  const { telling } = newest.report;
  if (pooled.kind === 'none') return [whyNot(meetings, pooled)];
  const { pair, metric } = together(newest, pooled);
  const whom = whomOf(pooled);
  const told = `${whom}: ${pairSentence(pair, metric, telling)} ${gapNumbers(pair, metric, telling)}`;
  if (pooled.kind === 'one-party')
    return [told, `What holds for ${pooled.golfers === 1 ? 'this golfer' : 'them'} need not hold for you.`];
  const another =
    pooled.newGolfer === null
      ? pooled.parties < fewestForNewGolfer
        ? 'Other golfers cannot be judged from so few.'
        : 'Golfers who hit together count as one here, so nothing can be said of another golfer.'
      : `For another golfer: ${gapNumbers({ ...pair, ci: pooled.newGolfer }, metric, telling)}`;
  const first =
    pooled.withoutFirst === null
      ? 'Without the first report there would be too few to put together.'
      : `Without the first report: ${gapNumbers(together(newest, pooled.withoutFirst).pair, metric, telling)}`;
  return [told, another, first];
}

/** For whom what is put together holds, at the head of its sentence. */
function whomOf(pooled: Pooled): string {
  if (pooled.kind === 'one-party') {
    const days = counted(pooled.days, 'day');
    const when = pooled.days === pooled.reports ? days : `${counted(pooled.reports, 'report')} on ${days}`;
    return `${pooled.golfers === 1 ? 'This golfer' : `The same ${countWord(pooled.golfers)} golfers`}, ${when}`;
  }
  const { parties, golfers, newGolfer } = pooled;
  if (parties < golfers)
    return `${capitalised(counted(golfers, 'golfer'))} in ${countWord(parties)} groups that share no golfer, each group counting alike`;
  const these = newGolfer === null ? 'These' : 'All';
  return `${these} ${countWord(golfers)} golfers together, each counting alike`;
}

function whyNot(
  meetings: readonly Meeting[],
  { why, parties }: Extract<MeetingsOfBuilds['pooled'], { kind: 'none' }>,
): string {
  if (why === 'no-spread')
    return 'The reports show one and the same gap, so nothing says how far it may be off.';
  if (meetings.length === 1) return 'One report; nothing to put together yet.';
  const used = meetings.filter(counts).length;
  const open =
    used < meetings.length
      ? ` ${capitalised(counted(meetings.length - used, 'report'))} cannot count, for the reason beside it.`
      : '';
  return `Not put together: that takes reports by three different golfers or groups of golfers, and there ${parties === 1 ? 'is' : 'are'} ${countWord(parties)}.${open}`;
}

/** Each report on one scale, then all together, then another golfer; words alone for a single report. */
export function meetingsFigure(
  { metric: id, meetings, pooled }: MeetingsOfBuilds,
  figureId: `meetings-${number}`,
): Figure {
  const [newest] = meetings;
  const head: FigureHead = {
    id: figureId,
    chart: 'meetings',
    about:
      newest === undefined
        ? { of: 'report' }
        : { of: 'pair', metric: id, a: newest.pair.a, b: newest.pair.b },
    question: figureTraits.meetings.question,
  };
  if (newest === undefined || meetings.length < 2) return absentFigure(head, notDrawn.oneReport);
  const { telling } = newest.report;
  const { pair, metric } = newest;
  const turned = turnedPair(pair, metric, telling);
  const place = ({ label }: ContenderName, index: number): ContenderName => ({ label, index });
  const [a, b] = turned.a.label === telling.nameOf(pair.a) ? [0, 1] : [1, 0];
  // One step for all rows: that of the newest report.
  const rowOf = (name: string, gap: { readonly estimate: number | null; readonly ci: Interval | null }) =>
    gapRow(name, gap, turned, metric, telling);
  const { more, ...band } = bandOf(metric, telling);
  const each = meetings.map((meeting) => rowOf(rowName(meeting), meeting.pair));
  const all =
    pooled.kind === 'none'
      ? null
      : rowOf(
          pooled.kind === 'one-party'
            ? whomOf(pooled)
            : `All ${countWord(pooled.parties)} ${pooled.parties < pooled.golfers ? 'groups' : 'golfers'}`,
          pooled,
        );
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
  return pooledRowsChart({
    ...head,
    ...words,
    ...band,
    description: [
      opening,
      ...rows.map(({ name, told }) => `${name}: ${told}.`),
      ...(another === null ? [] : [`${another.name}: ${another.words}.`]),
    ].join(' '),
    table: {
      caption: tableCaption,
      head: tableHead,
      rows: [
        ...rows.map(({ name, cells }) => [name, ...cells]),
        ...(another === null ? [] : [[another.name, '–', ...another.cells.slice(1)]]),
      ],
    },
    a: place(turned.a, a),
    b: place(turned.b, b),
    each,
    counted: 'reports',
    pooled: all,
    another,
  });
}

/** One report's own answer: "Hit 10 June 2026. Alder clearly farther than Birch. About 9 yards; 6 to 12 would fit." */
export function meetingWords({ report, pair, metric }: Meeting): string {
  const { front } = report.source;
  return [
    `Hit ${dateInWords(front.date, report.source.locale)}.`,
    standing(report),
    pairSentence(pair, metric, report.telling),
    gapNumbers(pair, metric, report.telling),
  ]
    .filter((words) => words !== '')
    .join(' ');
}

function nameOf({ report }: Meeting): string {
  return dateInWords(report.source.front.date, report.source.locale);
}

// A bar whose gap may have another cause looks like any other, so its name says so.
function rowName(meeting: Meeting): string {
  return `${nameOf(meeting)}${counts(meeting) ? '' : ', not counted'}`;
}

/** One row a report: who hit, where, in front of what, and whether it counts; `group` tells tables of a page apart. */
export function meetingsTable({ meetings, pooled }: MeetingsOfBuilds, group: string): Table {
  return {
    caption: `The reports and their conditions: ${group}`,
    head: ['Report', 'Golfers and shots', 'Place', 'Monitor', 'Corrected to', 'Put together'],
    rows: meetings.map((meeting) => {
      const { report } = meeting;
      const { front } = report.source;
      const monitor = capitalised(front.conditions.monitor?.kind ?? 'not recorded');
      return [
        `${front.title}, ${nameOf(meeting)}`,
        golfersAndShots(report),
        front.conditions.place ?? 'not recorded',
        `${monitor}. ${readingWords(report)}`,
        front.conditions.monitor?.normalisedTo ?? 'not recorded',
        countsWords(meeting, pooled.kind !== 'none'),
      ];
    }),
  };
}

function countsWords(meeting: Meeting, pooled: boolean): string {
  if (counts(meeting)) return pooled ? 'yes' : 'not yet';
  if (meeting.report.source.front.status === 'superseded') return 'no, replaced by a newer report';
  if (meeting.repeats) return 'no, the same shots as in a newer report';
  if (meeting.pair.verdict === 'not-judged') return 'no, not judged';
  return 'no, its order leaves the cause open';
}
