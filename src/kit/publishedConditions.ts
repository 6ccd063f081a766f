import { z } from 'zod';
import { ballQuestions } from '../intake/authored/ball.ts';
import { singleConditions } from '../intake/authored/conditions.ts';
import type { Front } from '../intake/authored/front.ts';
import { monitorQuestions } from '../intake/authored/monitor.ts';
import type { Session } from '../intake/session.ts';
import { publishedAnswers, publishedShape } from './publishedAnswers.ts';
import { said } from './publishedWords.ts';

const { place, surface, tee, ...around } = publishedShape(singleConditions);
const { description, ...ballParts } = publishedShape(ballQuestions);
const { kind, ...monitorParts } = publishedShape(monitorQuestions);

/** Where and in front of what shots were hit, as `findings.json` holds it. */
export const conditionsSchema = z.strictObject({
  place,
  surface,
  tee,
  ball: z.strictObject({ description, ...ballParts }).describe('the ball that was hit'),
  ...around,
  monitor: z
    .strictObject({
      kind,
      accuracy: said('accuracy of the monitor, in the words of whoever states it'),
      accuracyByMeasure: z
        .record(z.string(), z.string().describe('with its unit'))
        .describe('stated accuracy by id of the measure'),
      ...monitorParts,
    })
    .describe('what the shots were measured with'),
});

/** With what flights were modelled, as `findings.json` holds it. */
export const modelSchema = z
  .strictObject({
    coefficients: z.string().describe('the set of coefficients, which the page of methods cites'),
    dragScale: z
      .number()
      .positive()
      .describe(
        'by which the drag of the set is multiplied, fitted to the carries in the files; 1 without any',
      ),
    airDensity: z.number().positive().describe('kg/m3, from temperature, altitude and humidity as stated'),
    airViscosity: z.number().positive().describe('dynamic, Pa s'),
  })
  .nullable();

export function publishedConditions({
  conditions: { ball = {}, monitor = {}, ...single },
}: Pick<Front, 'conditions'>): z.infer<typeof conditionsSchema> {
  const stated = monitor.statedAccuracy;
  // In the order of the schema.
  return conditionsSchema.parse({
    ...publishedAnswers(singleConditions, single),
    ball: publishedAnswers(ballQuestions, ball),
    monitor: {
      ...publishedAnswers(monitorQuestions, monitor),
      accuracy: stated?.words ?? null,
      accuracyByMeasure: Object.fromEntries(
        Object.entries(stated?.byMetric ?? {}).map(([id, { typed }]) => [id, typed]),
      ),
    },
  });
}

export function publishedModel({
  modelledWith: model,
}: Pick<Session, 'modelledWith'>): z.infer<typeof modelSchema> {
  return model === undefined
    ? null
    : {
        coefficients: model.coefficients,
        dragScale: model.dragScale,
        airDensity: model.air.density,
        airViscosity: model.air.viscosity,
      };
}
