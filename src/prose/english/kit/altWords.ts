import { metrics, type MetricId } from '../../../trade/metrics.ts';
import { unitFor, unitWord } from '../../readerUnits.ts';
import type { Telling } from '../../telling.ts';
import { capitalised, listed } from '../../words.ts';

/** Where an alternative text has no room for all that a chart shows. */
export const sayMoreInReport = 'Its numbers stand in the report.';

/** "Carry and side in yards."; empty where nothing has a unit. */
export function sayUnits(all: readonly MetricId[], { system }: Telling): string {
  const byUnit = [...Map.groupBy(all, (id) => unitWord(unitFor(id, system)))].filter(([unit]) => unit !== '');
  if (byUnit.length === 0) return '';
  return `${capitalised(listed(byUnit.map(([unit, ids]) => `${listed(ids.map((id) => metrics[id].name))} in ${unit}`)))}.`;
}
