import { metrics, type MetricClass, type MetricId } from '../../trade/metrics.ts';
import { oneOf, text, withUnit, yesOrNo } from './answers.ts';
import { answeredOnly, recordOf, wordsOr, type Keyed } from './collections.ts';
import { metricName } from './metricName.ts';
import { quantityOf, type Quantity } from './quantity.ts';
import { strict } from './strict.ts';
import { takesOf } from './takes.ts';
import { readWith, schemaOf, understood, type Schema, type Understood } from './trouble.ts';

/** Where, with what ball and in front of what the shots were hit. What is absent was not recorded. */
export interface Conditions {
  readonly place?: string;
  readonly surface?: string;
  readonly tee?: string;
  readonly ball?: Ball;
  readonly temperature?: string;
  readonly altitude?: string;
  readonly wind?: string;
  readonly humidity?: string;
  readonly target?: string;
  readonly monitor?: Monitor;
}

export interface Ball {
  /** The short form: one sentence in place of the answers below. */
  readonly description?: string;
  readonly model?: string;
  readonly state?: string;
  readonly sameForAll?: boolean;
}

export interface Monitor {
  readonly kind?: string;
  /** A sentence, or an accuracy for each metric. */
  readonly statedAccuracy?: StatedAccuracy;
  readonly accuracyStatedBy?: string;
  readonly columns?: Keyed<MetricId, MetricClass>;
  readonly flight?: string;
  readonly normalisedTo?: string;
  readonly lastCheck?: string;
  readonly software?: string;
}

export interface StatedAccuracy {
  readonly words: string | null;
  readonly byMetric: Keyed<MetricId, Quantity>;
}

export const classOfReading: Schema<MetricClass> = oneOf(['measured', 'derived', 'modelled', 'estimated']);

// "±1 mph" is how accuracies are usually written.
const accuracyOf = (metric: MetricId): Schema<Quantity> =>
  schemaOf(takesOf(quantityOf(metric)), (typed): Understood<Quantity> =>
    readWith(
      quantityOf(metric),
      typeof typed === 'string' ? typed.replace(/^\s*(±|\+\/-|\+-)\s*/, '') : typed,
    ),
  );

const accuracies = recordOf(metricName, accuracyOf, 'an accuracy for each metric: {ball_speed: 1 mph}', {
  words: 'an accuracy for each [metric](#metrics), such as `{ball_speed: ±1 mph}`',
});

const statedAccuracy: Schema<StatedAccuracy> = schemaOf(
  { words: `text; or ${takesOf(accuracies).words}` },
  (answer): Understood<StatedAccuracy> => {
    if (typeof answer === 'string' && answer.trim() !== '')
      return understood({ words: answer.trim(), byMetric: {} });
    const read = readWith(accuracies, answer);
    return 'value' in read ? understood({ words: null, byMetric: read.value }) : read;
  },
);

const ballAnswers: Schema<Ball> = strict({
  model: text('the model of the ball, or "withheld" and why').exactOptional(),
  state: text('new, used or range ball').exactOptional(),
  same_for_all: yesOrNo.describe('whether every shot was hit with the same model').exactOptional(),
  description: text('the ball in one sentence').exactOptional(),
});

const monitorAnswers: Schema<Monitor> = strict({
  kind: text('radar, camera, both or club sensor').exactOptional(),
  stated_accuracy: statedAccuracy.describe('how accurate the monitor is said to be').exactOptional(),
  accuracy_stated_by: text('who states the accuracy').exactOptional(),
  columns: answeredOnly(
    recordOf(
      metricName,
      classOfReading,
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

export const ball: Schema<Ball> = wordsOr(
  (description) => ({ description }),
  ballAnswers,
  'the ball in one sentence',
).describe('which ball was hit');
export const monitor: Schema<Monitor> = wordsOr((kind) => ({ kind }), monitorAnswers, 'its kind').describe(
  'the launch monitor',
);

export const conditions: Schema<Conditions> = strict({
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
