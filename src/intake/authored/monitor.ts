import { z } from 'zod';
import { metrics, type MetricId } from '../../trade/metrics.ts';
import { oneOf, text } from './answers.ts';
import { byMetric } from './byMetric.ts';
import { answeredOnly, type Keyed } from './collections.ts';
import { lineOr } from './lineOr.ts';
import { quantityOf, type Quantity } from './quantity.ts';
import { answersOf, question, type Questions } from './question.ts';
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

const classes = answeredOnly(
  byMetric(
    () => classOfReading,
    `measured, derived, modelled or estimated for each metric: {${metrics.carry.name}: modelled}`,
    {
      words: `for each [metric](#metrics) ${takesOf(classOfReading).words}`,
      inside: [['.<metric>', classOfReading]],
    },
  ),
);

/** What is asked of the launch monitor. */
export const monitorQuestions = {
  kind: question(text('radar, camera, both or club sensor'), 'Radar, camera, both or a club sensor?', {
    readForPraise: true,
    published: { words: 'kind of launch monitor' },
  }),
  // Published in two parts, words and numbers.
  stated_accuracy: question(
    statedAccuracy.describe('how accurate the monitor is said to be'),
    'How accurate is it said to be, such as {ball_speed: 1 mph, carry: 3 yd}?',
  ),
  accuracy_stated_by: question(text('who states the accuracy'), 'Who says so?', {
    published: { words: 'who states the accuracy' },
  }),
  // A draft asks it of each column that it finds; the findings of each metric hold the answer.
  columns: question(classes.describe('how each column came about, where that is not as usual'), null),
  flight: question(
    text('flight seen, or net at which distance'),
    'Was the flight seen, or did a net stop the ball, and at which distance?',
    { readForPraise: true, published: { words: 'whether the flight was seen' } },
  ),
  normalised_to: question(
    text('the air and ball that distances are corrected to, or "nothing"'),
    'To which air and ball does it correct distances, or nothing?',
    { published: { words: 'air and ball that distances are corrected to' } },
  ),
  last_check: question(text('when the monitor was last checked'), 'When was it last checked?', {
    published: { words: 'when the monitor was last checked' },
  }),
  software: question(text('the version of the software'), null, {
    published: { words: 'version of its software' },
  }),
} as const satisfies Questions<'published' | 'readForPraise'>;

export const monitor = lineOr('its kind', (kind) => ({ kind }), strict(answersOf(monitorQuestions))).describe(
  'the launch monitor',
);
