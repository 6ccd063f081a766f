import { z } from 'zod';
import { findingsSchema, type MetricFindings, type PairFindings } from '../findings/findings.ts';
import { publicationOf, publicationSchema } from './publication.ts';
import type { Report } from './report.ts';

/** The answer about a pair as one sentence that can stand alone. */
export type SentenceOf = (pair: PairFindings, metric: MetricFindings, report: Report) => string;

const metric = findingsSchema.shape.metrics.element;
const pair = metric.shape.pairs.element;

/** The shape of `findings.json`: the findings of a report, the sentence printed for each pair, and who publishes them. */
export const publishedFindings = z
  .strictObject({
    ...publicationSchema.shape,
    ...findingsSchema.shape,
    metrics: z
      .array(
        metric.extend({
          pairs: z
            .array(
              pair.extend({
                sentence: z
                  .string()
                  .describe('the answer as the report prints it, in a sentence that can stand alone'),
              }),
            )
            .describe(metric.shape.pairs.description ?? ''),
        }),
      )
      .describe(findingsSchema.shape.metrics.description ?? ''),
  })
  .meta(findingsSchema.meta() ?? {});

/** `findings.json`: SI units, finite numbers, one stable order of keys. @param version of Straightface */
export function findingsJson(report: Report, version: string, sentenceOf: SentenceOf): string {
  const { findings, session, source } = report;
  const published = {
    ...publicationOf(source, session, version),
    ...findings,
    metrics: findings.metrics.map((one) => ({
      ...one,
      pairs: one.pairs.map((own) => ({ ...own, sentence: sentenceOf(own, one, report) })),
    })),
  };
  return `${JSON.stringify(published, null, 1)}\n`;
}

/** The same shape as a JSON Schema (draft 2020-12), for those who read the file with other tools. */
export function findingsJsonSchema(): string {
  return `${JSON.stringify(z.toJSONSchema(publishedFindings), null, 1)}\n`;
}
