import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import { metricIds, metrics, type MetricId } from '../trade/metrics.ts';
import type { Source } from './authored/source.ts';
import type { Session } from './session.ts';
import type { ShotColumn, ShotFile } from './shots/shotFile.ts';

/** One column a metric for all files: the coarsest step holds, and the report's word on how it was read. */
export function joinColumns(files: readonly ShotFile[], { front }: Source): Session['columns'] {
  const declared = front.conditions.monitor?.columns ?? {};
  const joined: Partial<Record<MetricId, ShotColumn>> = {};
  for (const metric of metricIds) {
    const own = files.flatMap(({ columns }) => columns[metric] ?? []);
    const [first] = own;
    if (first === undefined) continue;
    joined[metric] = {
      ...first,
      step: Math.max(...own.map(({ step }) => step)),
      class: declared[metric] ?? front.columns[metric]?.class ?? first.class,
    };
  }
  return joined;
}

/** Main metrics that no file has a column for, and that the flight model may not stand in for. */
export function missingPrimaries(
  columns: Session['columns'],
  files: readonly ShotFile[],
  { front, placeOf }: Source,
): readonly Problem[] {
  const headings = files.flatMap(({ columns: own }) => Object.values(own).map(({ heading }) => heading));
  return front.primary
    .filter((metric) => columns[metric] === undefined && !canBeModelled(metric, columns, front.modelled))
    .map((metric) =>
      makeProblem('primary-column-missing', placeOf(['primary']), {
        expected: `a column for ${metrics[metric].name} in ${front.session.join(', ')}`,
        found:
          headings.length === 0 ? 'no column of the trade' : `columns understood: ${headings.join(', ')}`,
        cure: `Add the column, write its heading under "columns" in report.md: columns: {${metric}: "..."}, or choose another primary metric.`,
      }),
    );
}

/** Whether the report lets the flight model stand in for a metric, and the files have the launches for it. */
function canBeModelled(metric: MetricId, columns: Session['columns'], allowed: readonly MetricId[]): boolean {
  const spin = columns.spin_rate ?? (columns.side_spin === undefined ? undefined : columns.back_spin);
  const launched =
    columns.ball_speed !== undefined && columns.launch_angle !== undefined && spin !== undefined;
  return allowed.includes(metric) && launched;
}
