import { metricIds, metrics } from '../../../trade/metrics.ts';
import { problemOf, shots, type Check } from './check.ts';

/**
 * Says how many counted shots have no reading; a reader should know what an average rests on. Columns that lack the same
 * shots are told in one go: a shot that the monitor missed lacks them all.
 */
export const checkMissingReadings: Check = (session) => {
  const counted = session.shots.filter(({ excluded }) => excluded === null);
  const lacking = metricIds.flatMap((id) => {
    if (session.columns[id] === undefined) return [];
    const without = counted.filter(({ values }) => (values[id] ?? null) === null);
    return without.length === 0 ? [] : [{ id, without }];
  });
  const alike = Map.groupBy(lacking, ({ without }) =>
    without.map(({ place }) => `${place.file}:${place.line}`).join(),
  );
  return [...alike.values()].flatMap((own) => {
    const [first] = own;
    if (first === undefined) return [];
    const { id, without } = first;
    const names = own.map(({ id: each }) => metrics[each].name);
    const all = without.length === counted.length;
    return problemOf('readings-missing', session, {
      metric: id,
      shots: without,
      expected: `${joined(names, 'and')} for every shot`,
      found: all ? 'no reading at all' : 'no reading',
      cure: 'nothing need be done: averages use the shots that have a reading, and the page says how many',
      forReader: all
        ? `No shot has a reading of ${joined(names, 'or')}.`
        : `${shots(without.length)} of ${counted.length} had no reading of ${joined(names, 'or')}.`,
    });
  });
};

const joined = (names: readonly string[], word: 'and' | 'or'): string =>
  [names.slice(0, -1).join(', '), ...names.slice(-1)].filter((part) => part !== '').join(` ${word} `);
