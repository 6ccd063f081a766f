import type { Interval, PairFindings } from './findings.ts';
import { whoGained } from './hitterFindings.ts';

interface Difference {
  readonly estimate: number;
  readonly ci: Interval;
}

/** A pair the other way round, `b` minus `a`; the drift that would make it is the same one. */
export function turnedPair(pair: PairFindings): PairFindings {
  const byHitter = pair.byHitter.map((own) => ({
    ...own,
    estimate: -own.estimate,
    ci: orNull(own.ci, turned),
  }));
  return {
    ...pair,
    a: pair.b,
    b: pair.a,
    estimate: pair.estimate === null ? null : -pair.estimate,
    ci: orNull(pair.ci, turned),
    holds: pair.holds.map(other),
    byRounds: orNull(pair.byRounds, other),
    leaveOneOut: orNull(pair.leaveOneOut, turned),
    withLeftOut: orNull(pair.withLeftOut, other),
    device: orNull(pair.device, (device) => ({ ...device, ci: turned(device.ci) })),
    atEqualSpeed: orNull(pair.atEqualSpeed, other),
    byHitter,
    whoGained: whoGained(byHitter),
    newHitter: orNull(pair.newHitter, turned),
  };
}

function turned([lower, upper]: Interval): Interval {
  return [-upper, -lower];
}

function other<Of extends Difference>(difference: Of): Of {
  return { ...difference, estimate: -difference.estimate, ci: turned(difference.ci) };
}

function orNull<Value, Result>(value: Value | null, of: (value: Value) => Result): Result | null {
  return value === null ? null : of(value);
}
