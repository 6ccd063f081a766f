import type { Problem } from '../../problems/problem.ts';
import type { MetricId } from '../../trade/metrics.ts';
import type { ShotFile } from './shotFile.ts';

type Outcome = 'accept' | 'accept-with-warning' | 'reject';

/** Whether a file can be used as it stands, with something to know about it, or not before it is mended. */
function outcomeOf({ problems }: Pick<ShotFile, 'problems'>): Outcome {
  if (problems.some(({ severity }) => severity === 'error')) return 'reject';
  return problems.length > 0 ? 'accept-with-warning' : 'accept';
}

/** `ball_speed` as `ballSpeed`. */
const camel = (id: string): string => id.replace(/_([a-z])/g, (_, letter: string) => letter.toUpperCase());

interface DryRun {
  readonly outcome: Outcome;
  /** One object a shot; a metric without a column has no key. Units are canonical. */
  readonly shots: readonly Readonly<Record<string, string | number | boolean | null>>[];
  readonly problems: readonly Problem[];
}

/** What one file says, for scripts: numbers in m, m/s, degrees, rpm and seconds, right of the target line positive. */
export function dryRunJson(shotFile: ShotFile): DryRun {
  const shots = shotFile.rows.map(
    ({ line, club, shotNo, time, hitter, round, note, excluded, warmUp, values }) => ({
      line,
      club,
      shotNo,
      time,
      hitter,
      round,
      note,
      excluded: excluded || warmUp,
      ...Object.fromEntries(
        (Object.keys(values) as MetricId[]).map((metric) => [camel(metric), values[metric] ?? null]),
      ),
    }),
  );
  return { outcome: outcomeOf(shotFile), shots, problems: shotFile.problems };
}
