import { fewestForSpread } from '../../findings/thresholds.ts';
import { metrics } from '../../trade/metrics.ts';
import type { SpreadStatement } from '../spread.ts';
import type { Telling } from '../telling.ts';
import { capitalised, listed } from '../words.ts';
import { sayExplored } from './explored.ts';

/** "Carry: no clear difference in consistency." */
export function saySpread({ metric, differing, explored }: SpreadStatement, telling: Telling): string {
  const name = capitalised(metrics[metric].name);
  if (differing === null) {
    return telling.findings.design.hitters > 1
      ? `${name}: consistency is judged for one golfer only.`
      : `${name}: consistency was not judged; that takes ${fewestForSpread} shots each.`;
  }
  if (differing.length === 0) return `${name}: no clear difference in consistency.`;
  const parts = differing.map(
    ({ steadier, other }) => `${telling.the(steadier)} was more consistent than ${telling.the(other)}`,
  );
  return `${name}: ${listed(parts)}. ${sayExplored(explored)}`;
}
