import type { Problem } from '../../problems/problem.ts';
import type { MetricId } from '../../trade/metrics.ts';
import type { ShotFile } from './shotFile.ts';

export type Outcome = 'accept' | 'accept-with-warning' | 'reject';

/** Whether a file can be used as it stands, with something to know about it, or not before it is mended. */
export function outcomeOf({ problems }: Pick<ShotFile, 'problems'>): Outcome {
  if (problems.some(({ severity }) => severity === 'error')) return 'reject';
  return problems.length > 0 ? 'accept-with-warning' : 'accept';
}

/** `ball_speed` as `ballSpeed`. */
const camel = (id: string): string => id.replace(/_([a-z])/g, (_, letter: string) => letter.toUpperCase());

export interface DryRun {
  readonly outcome: Outcome;
  /** One object a shot; a key is absent where the file has no such column. Units are canonical. */
  readonly shots: readonly Readonly<Record<string, string | number | boolean | null>>[];
  readonly problems: readonly Problem[];
}

/** What one file says, for scripts: numbers in m, m/s, degrees, rpm and seconds, right of the target line positive. */
export function dryRunJson(shotFile: ShotFile): DryRun {
  const { rows } = shotFile;
  const has = (key: 'shotNo' | 'time' | 'hitter' | 'round' | 'note'): boolean =>
    rows.some((row) => row[key] !== null);
  const optional = (['shotNo', 'time', 'hitter', 'round', 'note'] as const).filter(has);
  const marked = rows.some(({ excluded, warmUp }) => excluded || warmUp);
  const shots = rows.map((row) => ({
    line: row.line,
    club: row.club,
    ...Object.fromEntries(optional.map((key) => [key, row[key]])),
    ...(marked ? { excluded: row.excluded || row.warmUp } : {}),
    ...Object.fromEntries(
      (Object.keys(row.values) as MetricId[]).map((metric) => [camel(metric), row.values[metric] ?? null]),
    ),
  }));
  return { outcome: outcomeOf(shotFile), shots, problems: shotFile.problems };
}
