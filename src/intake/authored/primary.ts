import { z } from 'zod';
import { metrics, type MetricId } from '../../trade/metrics.ts';
import { oneOf } from './answers.ts';
import { byMetric } from './byMetric.ts';
import { answeredOnly, checkedFurther, oneOrMore } from './collections.ts';
import { metricName } from './metricName.ts';
import { quantityOf, type Quantity } from './quantity.ts';
import { takesOf, telling } from './takes.ts';
import { invalid, refused, understood, type Schema, type Understood } from './trouble.ts';

const mostPrimaries = 2;

/** The metric, at most two, that was chosen before hitting. */
export const primary = checkedFurther(
  oneOrMore(metricName, 'one metric, or a list of two at most'),
  (ids): Understood<readonly MetricId[]> => {
    const twice = ids.length !== new Set(ids).size;
    if (ids.length > 0 && ids.length <= mostPrimaries && !twice) return understood(ids);
    const found = ids.length === 0 ? 'an empty list' : ids.join(', ');
    const cure = twice
      ? 'Name each metric once.'
      : 'Choose the one that the question asks for; the others are shown as found along the way.';
    return refused(invalid([], 'one metric, or a list of two at most', found, cure));
  },
);

const direction = oneOf(['more', 'less', 'neither']);

export type Better = z.infer<typeof direction>;

const { words: directions } = takesOf(direction);
const directionsByMetric = byMetric(
  () => direction,
  'more, less or neither, or one of them for each metric',
  { words: `one of them for each [metric](#metrics)` },
);

/** Which way is better: one word for the primary metrics, or a word for each metric named. */
export const better = telling(z.union([direction, directionsByMetric]), {
  takes: { words: `${directions}; or ${takesOf(directionsByMetric).words}` },
});

/** The smallest gap that matters, for each metric named. */
export const matters = answeredOnly(
  byMetric(moreThanZero, 'a gap for each metric: {carry: 5 yd}', {
    words: 'for each [metric](#metrics) a number with its unit, such as `{carry: 5 yd}`',
    inside: [['.<metric>', quantityOf('carry')]],
  }),
);

function moreThanZero(metric: MetricId): Schema<Quantity> {
  return checkedFurther(quantityOf(metric), (gap): Understood<Quantity> => {
    if (gap.value > 0) return understood(gap);
    const cure = `Write the smallest gap in ${metrics[metric].name} that a customer should care about.`;
    return refused(invalid([], 'a gap above zero', gap.typed, cure));
  });
}
