import { metrics, type MetricId } from '../../trade/metrics.ts';
import { oneOf } from './answers.ts';
import { answeredOnly, checkedFurther, oneOrMore, recordOf, type Keyed } from './collections.ts';
import { metricName } from './metricName.ts';
import { quantityOf, type Quantity } from './quantity.ts';
import { takesOf } from './takes.ts';
import { readWith, refused, schemaOf, understood, type Schema, type Understood } from './trouble.ts';

export type Better = 'more' | 'less' | 'neither';

const mostPrimaries = 2;

/** The metric, at most two, that was chosen before hitting. */
export const primary: Schema<readonly MetricId[]> = checkedFurther(
  oneOrMore(metricName, 'one metric, or a list of two at most'),
  (ids): Understood<readonly MetricId[]> => {
    const twice = ids.length !== new Set(ids).size;
    if (ids.length > 0 && ids.length <= mostPrimaries && !twice) return understood(ids);
    return refused({
      kind: 'value-invalid',
      path: [],
      expected: 'one metric, or a list of two at most',
      found: ids.length === 0 ? 'an empty list' : ids.join(', '),
      cure: twice
        ? 'Name each metric once.'
        : 'Choose the one that the question asks for; the others are shown as found along the way.',
    });
  },
);

const direction: Schema<Better> = oneOf(['more', 'less', 'neither']);
const { words: directions } = takesOf(direction);
const byMetric = recordOf(metricName, direction, 'more, less or neither, or one of them for each metric', {
  words: `one of them for each [metric](#metrics)`,
});

/** Which way is better: one word for the primary metrics, or a word for each metric named. */
export const better: Schema<Better | Keyed<MetricId, Better>> = schemaOf(
  { words: `${directions}; or ${takesOf(byMetric).words}` },
  (answer): Understood<Better | Keyed<MetricId, Better>> =>
    typeof answer === 'string' && answer !== '' ? readWith(direction, answer) : readWith(byMetric, answer),
);

/** The smallest gap that matters, for each metric named. */
export const matters: Schema<Keyed<MetricId, Quantity>> = answeredOnly(
  recordOf(metricName, moreThanZero, 'a gap for each metric: {carry: 5 yd}', {
    words: 'for each [metric](#metrics) a number with its unit, such as `{carry: 5 yd}`',
    inside: [['.<metric>', quantityOf('carry')]],
  }),
);

function moreThanZero(metric: MetricId): Schema<Quantity> {
  return checkedFurther(quantityOf(metric), (gap): Understood<Quantity> => {
    if (gap.value > 0) return understood(gap);
    const expected = 'a gap above zero';
    const cure = `Write the smallest gap in ${metrics[metric].name} that a customer should care about.`;
    return refused({ kind: 'value-invalid', path: [], expected, found: gap.typed, cure });
  });
}
