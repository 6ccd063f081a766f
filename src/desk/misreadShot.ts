import { isMisread } from '../intake/leftOutReadings.ts';
import type { Exclusion, Shot } from '../intake/session.ts';
import type { ShotColumn } from '../intake/shots/shotFile.ts';
import { withoutUnseen } from '../intake/authored/unseenCharacters.ts';
import type { Problem } from '../problems/problem.ts';
import { isWithinLimits } from '../trade/limits.ts';
import { fromCanonical } from '../trade/units.ts';

/** The rule by which a shot goes of which a cell was misread. */
const rule = 'misread';

/** By which rule and for which reason a shot can be left out of which a cell cannot be; null where none is so. */
export function misreadIn(
  problems: readonly Problem[],
  { values }: Pick<Shot, 'values'>,
  columns: readonly ShotColumn[],
): Exclusion | null {
  const problem = problems.find(isMisread);
  if (problem === undefined) return null;
  const column = columns.find(({ heading }) => heading === problem.columnName);
  const value = column === undefined ? null : (values[column.metric] ?? null);
  const found = withoutUnseen(problem.found ?? '');
  if (column === undefined || value === null)
    return { rule, reason: `the reading is no number: ${found === '' ? 'nothing' : found}` };
  if (isWithinLimits(value, column.metric))
    return { rule, reason: `the readings cannot both be: ${found} (${column.heading})` };
  const read = Number(fromCanonical(value, column.unit).toFixed(3));
  return { rule, reason: `the reading cannot be: ${read}${column.unit === '1' ? '' : ` ${column.unit}`}` };
}
