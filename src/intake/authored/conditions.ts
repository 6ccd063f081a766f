import { z } from 'zod';
import { metrics, type MetricId } from '../../trade/metrics.ts';
import { oneOf, text, withUnit, yesOrNo } from './answers.ts';
import { byMetric } from './byMetric.ts';
import { answeredOnly, wordsOr, type Keyed } from './collections.ts';
import { quantityOf, type Quantity } from './quantity.ts';
import { strict } from './strict.ts';
import { takesOf, telling } from './takes.ts';
import type { Schema } from './trouble.ts';

export const classOfReading = oneOf(['measured', 'derived', 'modelled', 'estimated']);

// "±1 mph" is how accuracies are usually written.
const withoutSign = (typed: unknown): unknown =>
  typeof typed === 'string' ? typed.replace(/^\s*(±|\+\/-|\+-)\s*/, '') : typed;

const accuracies = byMetric(
  (metric) => z.preprocess(withoutSign, quantityOf(metric)),
  'an accuracy for each metric: {ball_speed: 1 mph}',
  { words: 'an accuracy for each [metric](#metrics), such as `{ball_speed: ±1 mph}`' },
);

/** A sentence, or an accuracy for each metric. */
interface StatedAccuracy {
  readonly words: string | null;
  readonly byMetric: Keyed<MetricId, Quantity>;
}

const statedAccuracy: Schema<StatedAccuracy> = telling(
  z.union([
    text('how accurate the monitor is said to be').transform((words) => ({ words, byMetric: {} })),
    accuracies.transform((measured) => ({ words: null, byMetric: measured })),
  ]),
  { takes: { words: `text; or ${takesOf(accuracies).words}` } },
);

const ballAnswers = strict({
  model: text('the model of the ball, or "withheld" and why').exactOptional(),
  state: text('new, used or range ball').exactOptional(),
  same_for_all: yesOrNo.describe('whether every shot was hit with the same model').exactOptional(),
  description: text('the ball in one sentence').exactOptional(),
});

const monitorAnswers = strict({
  kind: text('radar, camera, both or club sensor').exactOptional(),
  stated_accuracy: statedAccuracy.describe('how accurate the monitor is said to be').exactOptional(),
  accuracy_stated_by: text('who states the accuracy').exactOptional(),
  columns: answeredOnly(
    byMetric(
      () => classOfReading,
      `measured, derived, modelled or estimated for each metric: {${metrics.carry.name}: modelled}`,
      {
        words: `for each [metric](#metrics) ${takesOf(classOfReading).words}`,
        inside: [['.<metric>', classOfReading]],
      },
    ),
  )
    .describe('how each column came about, where that is not as usual')
    .exactOptional(),
  flight: text('flight seen, or net at which distance').exactOptional(),
  normalised_to: text('the air and ball that distances are corrected to, or "nothing"').exactOptional(),
  last_check: text('when the monitor was last checked').exactOptional(),
  software: text('the version of the software').exactOptional(),
});

type Ball = z.infer<typeof ballAnswers>;

export const ball = wordsOr<Ball>(
  text('the ball in one sentence').transform((description) => ({ description })),
  ballAnswers,
  'the ball in one sentence',
).describe('which ball was hit');

type Monitor = z.infer<typeof monitorAnswers>;

export const monitor = wordsOr<Monitor>(
  text('its kind').transform((kind) => ({ kind })),
  monitorAnswers,
  'its kind',
).describe('the launch monitor');

/** Where, with what ball and in front of what the shots were hit. What is absent was not recorded. */
export const conditions = strict({
  place: text('indoors or outdoors, and where').exactOptional(),
  surface: text('mat, turf or other ground').exactOptional(),
  tee: text('tee height or mat').exactOptional(),
  ball: ball.exactOptional(),
  temperature: withUnit('the temperature', '21 °C').exactOptional(),
  altitude: withUnit('the altitude', '120 m').exactOptional(),
  wind: text('the wind, or none').exactOptional(),
  humidity: text('the humidity').exactOptional(),
  target: text('what the hitter aimed at').exactOptional(),
  monitor: monitor.exactOptional(),
});

export type Conditions = z.infer<typeof conditions>;
