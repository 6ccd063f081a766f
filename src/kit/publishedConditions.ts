import { z } from 'zod';
import type { Front } from '../intake/authored/front.ts';
import type { Session } from '../intake/session.ts';
import { said, yesOrNo } from './publishedWords.ts';

/** Where and in front of what shots were hit, as `findings.json` holds it. */
export const conditionsSchema = z.strictObject({
  place: said('indoors or outdoors, and where'),
  surface: said('mat, turf or other ground'),
  tee: said('tee height or mat'),
  ball: z
    .strictObject({
      description: said('the ball in one sentence'),
      model: said('its model'),
      state: said('new, used or range ball'),
      sameForAll: yesOrNo('whether every shot was hit with the same model'),
    })
    .describe('the ball that was hit'),
  temperature: said('temperature with its unit'),
  altitude: said('altitude with its unit'),
  wind: said('wind'),
  humidity: said('humidity'),
  target: said('what was aimed at'),
  monitor: z
    .strictObject({
      kind: said('kind of launch monitor'),
      accuracy: said('accuracy of the monitor, in the words of whoever states it'),
      accuracyByMeasure: z
        .record(z.string(), z.string().describe('with its unit'))
        .describe('stated accuracy by id of the measure'),
      accuracyStatedBy: said('who states the accuracy'),
      flight: said('whether the flight was seen'),
      normalisedTo: said('air and ball that distances are corrected to'),
      lastCheck: said('when the monitor was last checked'),
      software: said('version of its software'),
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
  conditions: { ball = {}, monitor = {}, ...around },
}: Pick<Front, 'conditions'>): z.infer<typeof conditionsSchema> {
  return {
    place: around.place ?? null,
    surface: around.surface ?? null,
    tee: around.tee ?? null,
    ball: {
      description: ball.description ?? null,
      model: ball.model ?? null,
      state: ball.state ?? null,
      sameForAll: ball.sameForAll ?? null,
    },
    temperature: around.temperature ?? null,
    altitude: around.altitude ?? null,
    wind: around.wind ?? null,
    humidity: around.humidity ?? null,
    target: around.target ?? null,
    monitor: {
      kind: monitor.kind ?? null,
      accuracy: monitor.statedAccuracy?.words ?? null,
      accuracyByMeasure: Object.fromEntries(
        Object.entries(monitor.statedAccuracy?.byMetric ?? {}).map(([id, { typed }]) => [id, typed]),
      ),
      accuracyStatedBy: monitor.accuracyStatedBy ?? null,
      flight: monitor.flight ?? null,
      normalisedTo: monitor.normalisedTo ?? null,
      lastCheck: monitor.lastCheck ?? null,
      software: monitor.software ?? null,
    },
  };
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
