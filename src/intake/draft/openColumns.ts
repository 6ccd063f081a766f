import type { Problem } from '../../problems/problem.ts';
import type { ProblemKind } from '../../problems/kinds.ts';
import { metrics, type MetricId } from '../../trade/metrics.ts';
import { units, type UnitId } from '../../trade/units.ts';
import { isMisread } from '../leftOutReadings.ts';
import { readHeading } from '../shots/heading.ts';

/** A column whose unit only the fitter knows. */
export interface OpenColumn {
  readonly metric: MetricId;
  readonly heading: string;
  readonly units: readonly UnitId[];
}

const unitKinds: readonly ProblemKind[] = ['unit-missing', 'unit-ambiguous'];

/**
 * The columns for which a report has to state the unit, where nothing else keeps the file from being used; null
 * where something does, and the file itself must be mended. A misread cell does not: the report leaves its shot out.
 */
export function openColumns(problems: readonly Problem[]): readonly OpenColumn[] | null {
  const open = new Map<MetricId, OpenColumn>();
  for (const problem of problems) {
    const { kind, severity, columnName } = problem;
    if (severity !== 'error' || isMisread(problem)) continue;
    if (!unitKinds.includes(kind) || columnName === null) return null;
    const { meaning } = readHeading(columnName);
    if (meaning.kind !== 'metric') return null;
    const { dimension } = metrics[meaning.metric];
    const fitting = Object.values(units).filter((unit) => unit.dimensions.includes(dimension));
    open.set(meaning.metric, {
      metric: meaning.metric,
      heading: columnName,
      units: fitting.map(({ id }) => id),
    });
  }
  return [...open.values()];
}
