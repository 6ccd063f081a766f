import type { Source } from '../intake/authored/source.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import { metricIds, metrics } from '../trade/metrics.ts';
import { unusualMatters } from './thresholds.ts';

/** Whether what matters lies beyond a third to three times the trade's value. */
export function isUnusual(matters: number, ofTrade: number): boolean {
  return matters > unusualMatters * ofTrade || matters * unusualMatters < ofTrade;
}

/** What the report says matters beside the trade's value: by a large enough one any gap comes to nothing. */
export function checkMatters({ front, placeOf }: Source): readonly Problem[] {
  return metricIds.flatMap((id) => {
    const own = front.matters[id];
    if (own === undefined || !isUnusual(own.value, metrics[id].matters)) return [];
    return [
      makeProblem('matters-unusual', placeOf(['matters', id]), {
        expected: `a gap in ${metrics[id].name} between a third of the trade's value and three times it`,
        found: own.typed,
        cure: 'Check number and unit. If it is meant, say in the narrative why; it stands beside the answer with who set it.',
      }),
    ];
  });
}
