import { metrics, type MetricId } from '../../trade/metrics.ts';
import { units, type UnitId } from '../../trade/units.ts';
import type { ColumnOverride } from '../shots/shotFile.ts';
import { answer, inWords, meaning, oneOf, text } from './answers.ts';
import { byMetric } from './byMetric.ts';
import { wordsOr } from './collections.ts';
import { classOfReading } from './monitor.ts';
import { strict } from './strict.ts';
import type { Schema } from './trouble.ts';
import { unitNamed } from '../../trade/unitWords.ts';

const heading = text('the heading as it stands in the CSV');

function unitFor(metric: MetricId): Schema<UnitId> {
  const { dimension, name } = metrics[metric];
  const fitting = Object.values(units).filter((unit) => unit.dimensions.includes(dimension));
  const words = inWords(fitting.map(({ id }) => id));
  return answer(
    meaning((typed): UnitId | null => {
      const unit = typed === '1' ? '1' : unitNamed(typed);
      return unit !== null && units[unit].dimensions.includes(dimension) ? unit : null;
    }),
    { expected: `a unit of ${name}: ${words}`, cure: `Write ${words}.` },
    'a unit, such as `yd`, `m`, `mph`, `m/s`, `deg` or `rpm`',
  );
}

const overrideOf = (metric: MetricId): Schema<ColumnOverride> =>
  wordsOr<ColumnOverride>(
    heading.transform((stated) => ({ heading: stated })),
    strict({
      heading,
      unit: unitFor(metric).describe('the unit of the column').exactOptional(),
      positive: oneOf(['left', 'right', 'up', 'down', 'toe', 'heel'])
        .describe('what a number above zero means')
        .exactOptional(),
      class: classOfReading.describe('how the column came about').exactOptional(),
    }),
    'the heading as it stands in the CSV',
  );

/** Headings that the reader could not recognise, by metric: `{carry: {heading: "Dist", unit: m}}`. */
export const columns = byMetric(overrideOf, 'a heading for each metric: {carry: {heading: Dist, unit: m}}', {
  words: 'for each [metric](#metrics) the answers below',
  inside: [['.<metric>', overrideOf('carry')]],
});
