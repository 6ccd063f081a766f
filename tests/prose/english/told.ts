import type { MetricFindings } from '../../../src/findings/findings.ts';
import type { PairAnswer } from '../../../src/prose/statement.ts';
import type { Telling } from '../../../src/prose/telling.ts';
import { metrics, type MetricId } from '../../../src/trade/metrics.ts';
import { toCanonical, type UnitId } from '../../../src/trade/units.ts';
import { metricOf, tellingFor } from '../tellings.ts';

/** A pair answer typed as a reader would put it: `a` ahead of `b`, sizes in a unit. */
export interface TypedAnswer extends Partial<Omit<PairAnswer, 'difference' | 'about' | 'kind'>> {
  readonly metric?: MetricId;
  /** Best estimate and limits, counted towards `ahead`. */
  readonly d?: readonly [estimate: number, lower: number, upper: number] | null;
  readonly unit?: UnitId;
}

export function answerOfPair({ metric = 'carry', d = null, unit = 'yd', ...rest }: TypedAnswer): PairAnswer {
  const { ahead = 'a', behind = 'b' } = rest;
  const [first, second] = ahead < behind ? [ahead, behind] : [behind, ahead];
  const si = (value: number): number => toCanonical(value, unit);
  return {
    kind: 'pair-answer',
    about: { of: 'pair', metric, a: first, b: second },
    status: 'clear',
    ahead,
    behind,
    by: 'more',
    difference: d === null ? null : { estimate: si(d[0]), ci: [si(d[1]), si(d[2])] },
    matters: metrics[metric].matters,
    firstLook: false,
    alike: false,
    withinMatters: false,
    spellsAlike: false,
    because: null,
    hitLater: null,
    places: null,
    unconfirmed: null,
    notJudged: null,
    ...rest,
  };
}

/** A telling whose one metric has a widest interval of `halfWidth`, in a unit: that decides the step of all its numbers. */
export function tellingOf(
  metric: MetricId,
  halfWidth: number,
  unit: UnitId,
  options: Parameters<typeof tellingFor>[1] & {
    readonly matters?: number;
    readonly the?: Telling['the'];
  } = {},
): Telling {
  const wide = toCanonical(halfWidth, unit);
  const own: MetricFindings = metricOf(
    { metric, verdict: 'clear', pair: { estimate: 2 * wide, ci: [wide, 3 * wide] } },
    {
      resolution: toCanonical(0.1, unit) / 1000,
      ...(options.matters === undefined ? {} : { matters: toCanonical(options.matters, unit) }),
    },
  );
  const telling = tellingFor([own], options);
  return { ...telling, the: options.the ?? telling.nameOf };
}
