import type { MetricFindings } from '../findings/findings.ts';
import { primaryMetrics } from '../prose/answers.ts';
import { pairAnswers } from '../prose/pairAnswer.ts';
import { toReader, unitFor, unitsIn, withUnit } from '../prose/readerUnits.ts';
import type { PairAnswer } from '../prose/statement.ts';
import type { Telling } from '../prose/telling.ts';
import { bandOf } from './bandOf.ts';
import { stepOver, tickText } from './steps.ts';

/** One pair in the picture, counted towards the one ahead. */
export interface RingAndBarRow {
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
  /** Whether the order of the shots leaves it open what made the difference: then the bar is not filled. */
  readonly credit: 'credited' | 'open';
  /** Ids of the pair. */
  readonly ahead: string;
  readonly behind: string;
}

/**
 * What the ring and bar of a report's first pairs are drawn from: numbers in the unit that its scales are made in, so
 * that both systems of units draw every mark alike, and one step of the scale in the reader's own unit.
 */
export interface RingAndBar {
  /** Three at most, the surest answer first. */
  readonly rows: readonly RingAndBarRow[];
  /** The smallest difference that matters; 0 draws no band. */
  readonly matters: number;
  /** Both ends of the scale. */
  readonly from: number;
  readonly to: number;
  /** The one number of the scale besides 0, with what it counts: "16 yards farther". */
  readonly far: { readonly at: number; readonly words: string };
}

const mostRows = 3;

/** As far as this many times what matters each picture reaches, so that most show the band equally wide. */
const usualReach = 4;

/** Ring and bar of the first pairs of a report's first main measure; null where none of them was judged. */
export function ringAndBarOf(telling: Telling): RingAndBar | null {
  const [metric] = primaryMetrics(telling.findings);
  if (metric === undefined) return null;
  const rows = pairAnswers(metric, telling.findings.design)
    .flatMap((answer) => rowOf(answer, metric, telling))
    .slice(0, mostRows);
  if (rows.length === 0) return null;
  const matters = toReader(metric.matters, metric.id, telling.scalesIn);
  const reach = Math.max(usualReach * matters, ...rows.map(({ high }) => high)) || 1;
  const to = roundedUp(reach);
  return {
    rows,
    matters,
    from: Math.min(-1.1 * matters, ...rows.map(({ low }) => low - to / 100)),
    to,
    far: farEnd(to, metric, telling),
  };
}

function rowOf(
  { difference, because, ahead, behind }: PairAnswer,
  { id }: MetricFindings,
  { scalesIn }: Telling,
): readonly RingAndBarRow[] {
  if (difference === null) return [];
  const read = (si: number): number => toReader(si, id, scalesIn);
  const [low, high] = difference.ci;
  return [
    {
      ...{ estimate: read(difference.estimate), low: read(low), high: read(high) },
      credit: because === null ? 'credited' : 'open',
      ...{ ahead, behind },
    },
  ];
}

const mostSteps = 8;

function roundedUp(reach: number): number {
  const step = stepOver(reach, mostSteps);
  return Math.ceil(reach / step - 1e-9) * step;
}

/** The last round number of the reader's unit that the scale holds. */
function farEnd(to: number, metric: MetricFindings, telling: Telling): RingAndBar['far'] {
  const { scalesIn, system } = telling;
  const own = unitsIn(system, metric.id, scalesIn);
  const step = stepOver(to * own, mostSteps);
  const number = Math.floor((to * own) / step + 1e-9) * step;
  const size = withUnit(tickText(number, step), unitFor(metric.id, system));
  return { at: number / own, words: `${size} ${bandOf(metric, telling).more}` };
}
