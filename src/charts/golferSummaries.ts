import { contenderSummary } from '../findings/contenderSummary.ts';
import type { ContenderSummary, Findings } from '../findings/findings.ts';
import { samplesOf } from '../findings/samples.ts';
import type { Session } from '../intake/session.ts';
import type { MetricId } from '../trade/metrics.ts';

/** One golfer's counted shots with one contender. */
interface GolferSummary {
  readonly golfer: string;
  readonly summary: ContenderSummary;
  /** Shots of these that were left out. */
  readonly leftOut: number;
}

/** Each contender's shots golfer by golfer, those of one contender together, golfers by club speed; without those who did not hit it. */
export function golferSummaries(
  metric: MetricId,
  session: Session,
  { design }: Pick<Findings, 'design'>,
): readonly GolferSummary[] {
  const own = design.golfers.map(({ id }) => ({ id, samples: samplesOf(session, metric, { hitter: id }) }));
  return session.contenders.flatMap((contender) =>
    own.flatMap(({ id: golfer, samples }) => {
      const shots = session.shots.filter((shot) => shot.contender === contender && shot.hitter === golfer);
      const sample = samples.find((one) => one.contender === contender);
      return sample === undefined || shots.length === 0
        ? []
        : [
            {
              golfer,
              summary: contenderSummary(sample, true),
              leftOut: shots.filter(({ excluded }) => excluded !== null).length,
            },
          ];
    }),
  );
}
