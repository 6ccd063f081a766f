import type { ShotColumn } from '../intake/shots/shotFile.ts';
import type { Session } from '../intake/session.ts';
import type { AnalysisInput } from './analysisInput.ts';
import type { Drift } from './drift.ts';
import type { Hold, MetricFindings } from './findings.ts';
import type { Gap } from './gap.ts';
import type { HitterGaps, HitterSamples } from './hitterFindings.ts';
import type { HitOrder } from './hitOrder.ts';
import type { Sample } from './samples.ts';
import type { TurnGaps } from './turnGap.ts';
import type { WithoutDrift } from './withoutDrift.ts';

/** The shots that count, and the gaps they make. */
export interface ShotsCounted {
  readonly session: Session;
  readonly samples: readonly Sample[];
  readonly byHitter: readonly HitterSamples[];
  readonly gaps: readonly Gap[];
  readonly hitterGaps: HitterGaps;
  /** The same with rounds or visits as the unit. */
  readonly byTurns: () => TurnGaps;
}

/** What all pairs of a metric share. */
export interface PairFacts {
  readonly input: AnalysisInput;
  readonly column: ShotColumn;
  readonly order: HitOrder;
  readonly primary: boolean;
  readonly level: number;
  /** SI. */
  readonly matters: number;
  readonly better: MetricFindings['better'];
  readonly counted: ShotsCounted;
  /** The same with the left-out shots counted; null where none was left out. */
  readonly withLeftOut: ShotsCounted | null;
  readonly drifts: readonly Drift[];
  /** Contender of each shot, in hit order, a golfer that is judged each. */
  readonly sequences: readonly (readonly string[])[];
  /** Whether golfers are the unit. */
  readonly golfersAreUnit: boolean;
  readonly withoutDrift: WithoutDrift;
  /** Chance to find a true gap of what matters; null where it cannot be said. */
  readonly powerAtMatters: number | null;
  /** How a gap holds in other ways. */
  readonly holds: (gap: Gap, credited: boolean) => readonly Hold[];
}
