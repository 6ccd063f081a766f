import { z } from 'zod';
import { metricIds } from '../../trade/metrics.ts';
import { contenderAnswers } from './contender.ts';
import { frontAnswers } from './front.ts';
import { metricSpellings } from './metricName.ts';
import { shopAnswers } from './shop.ts';
import type { EditorSchema } from './schemaLine.ts';
import { toldBy } from './takes.ts';

type Json = z.core.JSONSchema.BaseSchema;

const schemas: Readonly<Record<EditorSchema, { readonly title: string; readonly answers: z.ZodType }>> = {
  report: { title: 'The answers of a report', answers: frontAnswers },
  shop: { title: 'Who publishes', answers: shopAnswers },
  contender: { title: 'A build sheet that several reports share', answers: contenderAnswers },
};

export const editorSchemaNames = Object.keys(schemas) as readonly EditorSchema[];

/** By this line a schema is known as ours: a file without it was made by hand, and stays. */
export const ownComment = 'Written by Straightface from what it reads; another version writes it anew.';

/**
 * The JSON Schema (draft 2020-12) of a file that a shop writes, as text, for an editor: as that reads YAML, numbers, yes
 * and no are not text, as they are to us.
 */
export function editorSchema(name: EditorSchema): string {
  const { title, answers } = schemas[name];
  const { $schema, ...json } = z.toJSONSchema(answers, { io: 'input', unrepresentable: 'any', override });
  return `${JSON.stringify({ $schema, $comment: ownComment, title, ...json, $defs: shared })}\n`;
}

const anyCase = (words: string): string =>
  words.replace(/[a-z]/g, (letter) => `[${letter.toUpperCase()}${letter}]`);

const inAnyCase = (words: readonly string[], blank = ' '): Json => ({
  type: 'string',
  pattern: `^\\s*(${words.map((word) => anyCase(word).replaceAll(' ', blank)).join('|')})\\s*$`,
});

const shared: Readonly<Record<string, Json>> = {
  metric: {
    anyOf: [{ enum: [...metricIds] }, inAnyCase(metricSpellings, '[\\s_-]+')],
  },
  unanswered: {
    description: 'not recorded',
    anyOf: [{ type: 'null' }, { type: 'string', pattern: `^\\s*(${anyCase('not recorded')})?\\s*$` }],
  },
};

/** Makes of zod's schema of what we read the schema of what an editor reads. */
function override({ zodSchema, jsonSchema }: { zodSchema: z.core.$ZodTypes; jsonSchema: Json }): void {
  const { structure, inEditor } = toldBy(zodSchema);
  if (structure !== undefined) {
    const { description } = jsonSchema;
    const json = z.toJSONSchema(structure, { io: 'input', unrepresentable: 'any', override });
    Object.assign(jsonSchema, json, description === undefined ? {} : { description });
    delete jsonSchema.$schema;
  }
  if (zodSchema instanceof z.ZodString) jsonSchema.type = ['string', 'number', 'boolean'] as never;
  if (zodSchema instanceof z.ZodEnum) wordsOnly(jsonSchema, zodSchema.options.map(String));
  if (zodSchema instanceof z.ZodLiteral) wordsOnly(jsonSchema, [...zodSchema.values].map(String));
  // What begins with a step of its own looks optional to zod.
  if (zodSchema instanceof z.ZodObject)
    jsonSchema.required = Object.keys(zodSchema.shape).filter(
      (key) => !(zodSchema.shape[key] instanceof z.ZodExactOptional),
    );
  Object.assign(jsonSchema, inEditor);
  if (zodSchema instanceof z.ZodExactOptional) orUnanswered(jsonSchema);
}

function wordsOnly(json: Json, words: readonly string[]): void {
  delete json.type;
  delete json.enum;
  delete json.const;
  json.anyOf = [{ enum: [...words] }, inAnyCase(words)];
}

/** An answer that may be left open: nothing behind its colon, or "not recorded". */
function orUnanswered(json: Json): void {
  const { description, examples, ...answered } = json;
  for (const key of Object.keys(answered)) delete json[key];
  json.anyOf = [answered, { $ref: '#/$defs/unanswered' }];
}
