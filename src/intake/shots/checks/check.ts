import type { ProblemKind } from '../../../problems/kinds.ts';
import { makeProblem } from '../../../problems/makeProblem.ts';
import type { Problem, Severity } from '../../../problems/problem.ts';
import { metrics, type MetricId } from '../../../trade/metrics.ts';
import { fromCanonical, units } from '../../../trade/units.ts';
import type { Session, Shot } from '../../session.ts';
import { asSentence } from '../collector.ts';
import type { ShotColumn } from '../shotFile.ts';

/** What the report says that a check needs to know. */
export interface CheckContext {
  /** What was hit, where the report says so; some limits hold for one kind only. */
  readonly club?: 'driver' | 'iron' | 'wedge';
  /** False where the report states that the rows are not in the order of hitting. */
  readonly inHitOrder?: boolean;
  /** Whether the report tells what was hit before the first shot, or that none is lacking. */
  readonly startTold?: boolean;
}

/** Looks at a session and says what cannot be, or should be known. Pure. */
export type Check = (session: Session, context: CheckContext) => readonly Problem[];

/** A counted shot with a reading in every metric asked for. */
export interface Reading<Id extends MetricId> {
  readonly shot: Shot;
  readonly value: Readonly<Record<Id, number>>;
}

/** Counted shots that have all of these readings. Shots left out by the report are not looked at. */
export function readingsOf<Id extends MetricId>(
  session: Session,
  ids: readonly Id[],
): readonly Reading<Id>[] {
  if (ids.some((id) => session.columns[id] === undefined)) return [];
  return session.shots.flatMap((shot) => {
    if (shot.excluded !== null) return [];
    const value: Partial<Record<Id, number>> = {};
    for (const id of ids) {
      const reading = shot.values[id] ?? null;
      if (reading === null) return [];
      value[id] = reading;
    }
    return isComplete(value, ids) ? [{ shot, value }] : [];
  });
}

function isComplete<Id extends MetricId>(
  value: Partial<Record<Id, number>>,
  ids: readonly Id[],
): value is Record<Id, number> {
  return ids.every((id) => value[id] !== undefined);
}

/** Half the step a column is written in: how far a rounded number may be from the one that was measured. */
export function halfStep(session: Session, id: MetricId): number {
  return (session.columns[id]?.step ?? 0) / 2;
}

/** Room for binary arithmetic. */
export const epsilon = 1e-9;

/** A canonical value as the file would write it: `155.4 mph`. */
export function written(value: number, id: MetricId, column: ShotColumn | undefined): string {
  const unit = column?.unit ?? 'm';
  const step = column === undefined ? 0.1 : fromCanonical(column.step, unit);
  const decimals = Math.min(3, Math.max(0, Math.round(-Math.log10(step))));
  const number = fromCanonical(value, unit).toFixed(decimals);
  return units[unit].id === '1' ? `${metrics[id].name} ${number}` : `${metrics[id].name} ${number} ${unit}`;
}

/** What is wrong with some shots. */
export interface Failed {
  /** The metric whose column is named; null where it concerns the shots as such. */
  readonly metric: MetricId | null;
  readonly shots: readonly Shot[];
  readonly expected: string;
  /** What the first of the shots says. */
  readonly found: string;
  readonly cure: string;
  readonly forReader?: string;
  readonly severity?: Severity;
}

const named = 20;

/** The lines of some shots, for a message. */
function linesOf(shots: readonly Shot[]): string {
  const lines = shots.slice(0, named).map(({ place }) => place.line);
  const more = shots.length > named ? ` and ${shots.length - named} more` : '';
  return `${lines.length === 1 ? 'line' : 'lines'} ${lines.join(', ')}${more}`;
}

/** One problem for all shots that fail a check, placed at the first of them. */
export function problemOf(
  kind: ProblemKind,
  session: Session,
  { metric, shots, ...words }: Failed,
): readonly Problem[] {
  const [first] = shots;
  if (first === undefined) return [];
  const column = metric === null ? undefined : session.columns[metric];
  const found =
    shots.length === 1 ? words.found : `${words.found}; ${shots.length} shots in all, ${linesOf(shots)}`;
  return [
    makeProblem(
      kind,
      {
        file: first.place.file,
        line: first.place.line,
        column: column?.column ?? null,
        columnName: column?.heading ?? null,
      },
      { ...words, found, cure: asSentence(words.cure) },
    ),
  ];
}

export const shots = (count: number): string => `${count} ${count === 1 ? 'shot' : 'shots'}`;
