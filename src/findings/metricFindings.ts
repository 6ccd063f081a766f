import { pairsOf } from '../stats/gapInterval.ts';
import { metrics } from '../trade/metrics.ts';
import { canonicalUnit } from '../trade/units.ts';
import type { ShotColumn } from '../intake/shots/shotFile.ts';
import type { AnalysisInput } from './analysisInput.ts';
import { contenderSummary } from './contenderSummary.ts';
import { creditOf } from './credit.ts';
import { driftsOf, sequencesOf } from './drift.ts';
import type { MetricFindings, PairFindings } from './findings.ts';
import type { HitOrder } from './hitOrder.ts';
import { pairOverlays } from './overlays.ts';
import { samplesOf } from './samples.ts';
import { shotGaps, type JudgedGap } from './shotGaps.ts';
import { verdictOf } from './verdict.ts';

/**
 * One metric judged: summaries, the test of all contenders at once, and every pair with its verdict, credit and
 * overlays. Primary metrics share the 5 % between them; exploratory ones are judged at 95 % each.
 */
export function metricFindings(input: AnalysisInput, column: ShotColumn, order: HitOrder): MetricFindings {
  const id = column.metric;
  const primary = input.primaries.includes(id);
  const level = primary ? 1 - 0.05 / input.primaries.length : 0.95;
  const matters = input.matters[id] ?? metrics[id].matters;
  const samples = samplesOf(input.session, id);
  const { gaps, omnibus } = shotGaps(samples, level, column.step);
  const drifts = order.rowsInHitOrder ? driftsOf(input.session, id) : [];
  const sequences = sequencesOf(input.session);
  const counts = new Map(samples.map(({ contender, values }) => [contender, values.length]));
  return {
    id,
    unit: canonicalUnit[metrics[id].dimension],
    class: column.class,
    role: primary ? 'primary' : 'exploratory',
    better: input.better[id] ?? metrics[id].better,
    matters,
    byContender: samples.map(contenderSummary),
    omnibus,
    pairs: pairsOf(samples.length).map(([first, second]) => {
      const a = samples[first]?.contender ?? '';
      const b = samples[second]?.contender ?? '';
      const gap = gaps.find((candidate) => candidate.a === a && candidate.b === b) ?? null;
      const credit = creditOf({ a, b, matters, order, drifts, sequences });
      return {
        ...pairFigures(gap, a, b, level, matters),
        credit: credit.credit,
        overlays: pairOverlays({
          input,
          primary,
          column,
          gap,
          matters,
          counts: [counts.get(a) ?? 0, counts.get(b) ?? 0],
          openBecause: credit.because,
        }),
        holds: [],
      };
    }),
  };
}

type PairFigures = Omit<PairFindings, 'credit' | 'overlays' | 'holds'>;

function pairFigures(gap: JudgedGap | null, a: string, b: string, level: number, matters: number): PairFigures {
  if (gap === null) {
    return { a, b, estimate: null, ci: null, level, p: null, method: null, verdict: 'not-judged' };
  }
  const { estimate, ci, p, method } = gap;
  return { a, b, estimate, ci, level, p, method, verdict: verdictOf(estimate, ci, matters) };
}
