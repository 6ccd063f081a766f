import type { ProblemKind } from '../../../problems/kinds.ts';
import type { MetricId } from '../../../trade/metrics.ts';
import type { Session } from '../../session.ts';
import { readingsOf, type Check, type Reading } from './check.ts';
import { readingsProblem } from './readingsProblem.ts';

/** A reading that follows from two others of the same shot. */
interface Relation<Id extends MetricId> {
  readonly kind: ProblemKind;
  readonly whole: Id;
  readonly parts: readonly [Id, Id];
  /** Whether a shot's readings cannot be, in canonical units, with room for how they are rounded. */
  readonly fails: (value: Reading<Id>['value'], session: Session) => boolean;
  /** What the two make of it. */
  readonly expected: (value: Reading<Id>['value']) => string;
  readonly cure: string;
}

/** A check of such a reading, which shows all three of the first shot in which it does not follow. */
export function followsFrom<Id extends MetricId>({
  kind,
  whole,
  parts,
  fails,
  expected,
  cure,
}: Relation<Id>): Check {
  const [one, other] = parts;
  return (session) => {
    const failing = readingsOf(session, [whole, ...parts]).filter(({ value }) => fails(value, session));
    return readingsProblem(kind, session, failing, ({ value, print }) => ({
      metric: whole,
      expected: expected(value),
      found: `${print(whole)} beside ${print(one)} and ${print(other)}`,
      cure,
    }));
  };
}
