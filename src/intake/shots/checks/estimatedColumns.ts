import { metricIds, metrics, type MetricId } from '../../../trade/metrics.ts';
import type { Session } from '../../session.ts';
import { problemOf, readingsOf, type Check } from './check.ts';

/** Share of readings that one number may have before the column looks filled in, and how often it then stands. */
const share = 1 / 3;
const fewest = 4;
/** How much commoner it is than the next number; in a column with coarse steps neighbours are about as common. */
const lead = 3;

interface Commonest {
  readonly value: number;
  readonly count: number;
  readonly of: number;
}

/** The number that stands too often in a column to have been measured; null where there is none. */
function repeatedValue(session: Session, id: MetricId): Commonest | null {
  const values = readingsOf(session, [id]).map(({ value }) => value[id]);
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  const [top, next] = [...counts].toSorted((a, b) => b[1] - a[1]);
  if (top === undefined || values.length < 4 || top[0] === 0) return null;
  const [value, count] = top;
  const stands = count >= Math.max(fewest, share * values.length) && count >= lead * (next?.[1] ?? 0);
  return stands ? { value, count, of: values.length } : null;
}

/** Columns said to be measured in which one number stands on many shots: estimated rather than measured. */
export function estimatedColumns(session: Session): readonly MetricId[] {
  return metricIds.filter(
    (id) =>
      metrics[id].dimension !== 'ratio' &&
      session.columns[id] !== undefined &&
      repeatedValue(session, id) !== null,
  );
}

/** C17: a column with the same number on many shots was filled in, not measured. */
export const checkEstimated: Check = (session) =>
  estimatedColumns(session).flatMap((id) => {
    const common = repeatedValue(session, id);
    if (common === null) return [];
    const alike = readingsOf(session, [id]).filter(({ value }) => value[id] === common.value);
    const { name } = metrics[id];
    return problemOf('column-looks-estimated', session, {
      metric: id,
      shots: alike.map(({ shot }) => shot).slice(0, 1),
      expected: `${name} that differs from shot to shot`,
      found: `the same number on ${common.count} of ${common.of} shots`,
      cure: `say under "columns" in the report whether the monitor measured ${name}; it is treated as estimated`,
      forReader: `${name.charAt(0).toUpperCase()}${name.slice(1)} has the same number on ${common.count} of ${common.of} shots: it looks estimated, not measured.`,
    });
  });
