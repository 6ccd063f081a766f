import type { ShotColumn } from '../intake/shots/shotFile.ts';
import type { MetricId } from '../trade/metrics.ts';
import type { DeviceReach } from './findings.ts';
import type { Gap } from './gap.ts';
import { accuracyFactor } from './thresholds.ts';
import { isGap, verdictOf } from './verdict.ts';

/** Readings whose error may depend on the contender whatever their class. */
const dependsOnContender: ReadonlySet<MetricId> = new Set([
  'club_speed',
  'face_angle',
  'face_to_path',
  'smash',
]);

/**
 * A gap beside the stated accuracy of its column, where the error may differ between contenders; null where it
 * cancels or no accuracy is stated. The wider interval adds a rectangular error of +-accuracy to either contender
 * (JCGM 100:2008, 4.3.7; from memory).
 */
export function deviceReach(
  gap: Gap,
  column: ShotColumn,
  accuracy: number | null,
  matters: number,
): DeviceReach | null {
  const exposed =
    dependsOnContender.has(column.metric) || column.class === 'estimated' || column.class === 'modelled';
  if (!exposed || accuracy === null) return null;
  const halfWidth = (gap.ci[1] - gap.ci[0]) / 2;
  const wider = Math.hypot(halfWidth, accuracyFactor * accuracy);
  return {
    accuracy,
    ci: [gap.estimate - wider, gap.estimate + wider],
    near:
      isGap(verdictOf(gap.estimate, gap.ci, matters)) &&
      Math.min(Math.abs(gap.ci[0]), Math.abs(gap.ci[1])) <= accuracy,
  };
}
