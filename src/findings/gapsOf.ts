import type { Session } from '../intake/session.ts';
import { fewHitterGaps } from './fewHitterGaps.ts';
import { noGaps, type Gaps } from './gap.ts';
import { hitterModelGaps } from './hitterModelGaps.ts';
import type { HitterSamples } from './hitterFindings.ts';
import { judgedGolfers } from './judgedGolfers.ts';
import type { OrderedSamples } from './orderedSamples.ts';
import { gapOfRounds, roundDifferences } from './pairedRounds.ts';
import { shotGaps } from './shotGaps.ts';
import { fewestHittersAsUnit } from './thresholds.ts';

/** Whether the shot or the hitter is the unit of a session's analysis. */
export function unitOf(session: Session): 'shot' | 'hitter' {
  return judgedGolfers(session).judged.length >= fewestHittersAsUnit ? 'hitter' : 'shot';
}

interface GapFacts extends OrderedSamples {
  readonly byHitter: readonly HitterSamples[];
  readonly level: number;
  readonly step: number;
  /** Whether two contenders may be judged by rounds; a gap is held beside one judged as it is itself. */
  readonly mayPair?: boolean;
}

/** The gaps of a metric by the method that golfers, contenders and order ask for. */
export function gapsOf(facts: GapFacts): Gaps {
  const { session, metric, order, samples, byHitter, level, step, mayPair = true } = facts;
  if (byHitter.length <= 1) {
    const flat = samples.every(({ values }) => new Set(values).size < 2);
    const differences = flat || !mayPair ? null : roundDifferences(session, metric, order);
    const gap = differences === null ? null : gapOfRounds(session.contenders, differences, level, step);
    return gap === null ? shotGaps(samples, level, step) : { ...noGaps, gaps: [gap] };
  }
  const tables = byHitter.map(({ samples: own }) => own);
  return byHitter.length < fewestHittersAsUnit
    ? fewHitterGaps(tables, level, step)
    : hitterModelGaps(tables, level);
}
