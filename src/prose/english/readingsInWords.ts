import { isReadingStated } from '../../findings/fairness.ts';
import type { Front } from '../../intake/authored/front.ts';
import { flightModelHeading } from '../../intake/modelledColumns.ts';
import type { Session } from '../../intake/session.ts';
import { metrics } from '../../trade/metrics.ts';
import { listed } from '../words.ts';

/** Which readings were measured and which calculated, as the list of conditions says it; null where there are none. */
export function readingsInWords(front: Front, session: Pick<Session, 'columns'>): string | null {
  const classes = Map.groupBy(Object.values(session.columns), (column) => {
    if (column.heading === flightModelHeading) return 'calculated by our flight model, to about 6%';
    return column.class === 'measured' && !isReadingStated(front, column.metric)
      ? 'not stated; treated as measured'
      : column.class;
  });
  const columns = [...classes].map(
    ([kind, own]) => `${kind}: ${listed(own.map(({ metric }) => metrics[metric].name))}`,
  );
  return columns.length === 0 ? null : columns.join('; ');
}
