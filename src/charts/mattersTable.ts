import type { Quantity } from '../intake/authored/quantity.ts';
import { metricIds, metrics, type MetricId } from '../trade/metrics.ts';
import { mattersWords } from '../prose/english/ranges.ts';
import { toReader, unitFor, type UnitSystem } from '../prose/readerUnits.ts';
import { capitalised } from '../prose/words.ts';
import type { Table } from './table.ts';

/** The smallest difference that matters for each metric: the shop's own, else the built-in one. */
export function mattersTable(system: UnitSystem, own: Readonly<Partial<Record<MetricId, Quantity>>>): Table {
  return {
    caption: 'The smallest difference that matters, unless a report says otherwise',
    head: ['Measure', 'Smallest difference that matters', 'Set by'],
    rows: metricIds.map((id) => {
      const gap = own[id]?.value ?? metrics[id].matters;
      const text = mattersWords({ matters: toReader(gap, id, system), unit: unitFor(id, system) });
      return [capitalised(metrics[id].name), text, own[id] === undefined ? 'Straightface' : 'the shop'];
    }),
  };
}
