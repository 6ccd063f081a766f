import { at } from '../stats/at.ts';
import { brownForsythe, brownForsythePairs } from '../stats/brownForsythe.ts';
import { bonettSdInterval } from '../stats/sdInterval.ts';
import { StatisticsError } from '../stats/statisticsError.ts';
import type { Interval, SpreadFindings } from './findings.ts';
import type { Sample } from './samples.ts';
import { confidence, fewestForSdInterval, fewestForSpread, surelyP } from './thresholds.ts';

/** Whether the spreads differ: Brown-Forsythe, pairs by Holm. Null where fewer than two contenders have the shots. */
export function spreadOf(samples: readonly Sample[]): SpreadFindings | null {
  const judged = samples.filter(({ values }) => values.length >= fewestForSpread);
  if (judged.length < 2) return null;
  const groups = judged.map(({ values }) => values);
  try {
    return {
      p: brownForsythe(groups).p,
      pairs: brownForsythePairs(groups).flatMap(({ a, b, ratio, distanceGap, p }) =>
        Number.isFinite(ratio)
          ? [
              {
                a: at(judged, a).contender,
                b: at(judged, b).contender,
                ratio,
                tighter: distanceGap < 0 ? ('a' as const) : ('b' as const),
                p,
                clear: p < surelyP,
              },
            ]
          : [],
      ),
    };
  } catch (error) {
    if (error instanceof StatisticsError) return null;
    throw error;
  }
}

/** Interval of a contender's sd (Bonett 2006), null under eight shots or where all readings are the same. */
export function sdIntervalOf(values: readonly number[]): Interval | null {
  if (values.length < fewestForSdInterval || new Set(values).size === 1) return null;
  return bonettSdInterval(values, confidence);
}
