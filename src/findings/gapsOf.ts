import type { Session } from '../intake/session.ts';
import { fewHitterGaps } from './fewHitterGaps.ts';
import type { Gaps } from './gap.ts';
import { hitterModelGaps } from './hitterModelGaps.ts';
import type { HitterSamples } from './hitterFindings.ts';
import { judgedGolfers } from './judgedGolfers.ts';
import type { Sample } from './samples.ts';
import { shotGaps } from './shotGaps.ts';
import { fewestHittersAsUnit } from './thresholds.ts';

/** Whether the shot or the hitter is the unit of a session's analysis. */
export function unitOf(session: Session): 'shot' | 'hitter' {
  return judgedGolfers(session).judged.length >= fewestHittersAsUnit ? 'hitter' : 'shot';
}

/** The gaps of a metric by the method that the number of hitters asks for. */
export function gapsOf(
  samples: readonly Sample[],
  byHitter: readonly HitterSamples[],
  level: number,
  step: number,
): Gaps {
  if (byHitter.length <= 1) return shotGaps(samples, level, step);
  const tables = byHitter.map(({ samples: own }) => own);
  return byHitter.length < fewestHittersAsUnit
    ? fewHitterGaps(tables, level, step)
    : hitterModelGaps(tables, level);
}
