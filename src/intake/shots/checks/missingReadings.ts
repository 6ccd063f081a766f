import { metricIds, metrics } from '../../../trade/metrics.ts';
import { problemOf, shots, type Check } from './check.ts';

/** Says for each column how many counted shots have no reading; a reader should know what an average rests on. */
export const checkMissingReadings: Check = (session) => {
  const counted = session.shots.filter(({ excluded }) => excluded === null);
  return metricIds.flatMap((id) => {
    if (session.columns[id] === undefined) return [];
    const without = counted.filter(({ values }) => (values[id] ?? null) === null);
    const { name } = metrics[id];
    if (without.length === 0) return [];
    const all = without.length === counted.length;
    return problemOf('readings-missing', session, id, without, {
      expected: `${name} for every shot`,
      found: all ? 'no reading at all' : 'no reading',
      cure: 'nothing need be done: averages use the shots that have a reading, and the page says how many',
      forReader: all
        ? `No shot has a reading of ${name}.`
        : `${shots(without.length)} of ${counted.length} had no ${name} reading.`,
    });
  });
};
