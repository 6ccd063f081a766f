import type { ProblemKind } from '../../../problems/kinds.ts';
import type { Problem } from '../../../problems/problem.ts';
import type { MetricId } from '../../../trade/metrics.ts';
import type { Session } from '../../session.ts';
import { problemOf, written, type Failed, type Reading } from './check.ts';

/** The first of the shots that fail a check, to be told of. */
interface First<Id extends MetricId> {
  readonly value: Reading<Id>['value'];
  /** A reading as the file would write it. */
  readonly print: (id: Id) => string;
}

/** What is said of them, and the metric whose column is named. */
interface Told<Id extends MetricId> extends Omit<Failed, 'metric' | 'shots'> {
  readonly metric: NoInfer<Id>;
}

/** One problem for all shots whose readings fail a check, in the words of the first; none where all pass. */
export function readingsProblem<Id extends MetricId>(
  kind: ProblemKind,
  session: Session,
  failing: readonly Reading<Id>[],
  tell: (first: First<Id>) => Told<Id>,
): readonly Problem[] {
  const [first] = failing;
  if (first === undefined) return [];
  const { value } = first;
  const print = (id: Id): string => written(value[id], id, session.columns[id]);
  const shots = failing.map(({ shot }) => shot);
  return problemOf(kind, session, { shots, ...tell({ value, print }) });
}
