import { takesOf } from '../intake/authored/takes.ts';
import { answerFields, type AnswerField } from './answerFields.ts';
import { control } from './control.ts';
import { frontSchema } from './frontSchema.ts';
import type { Markup } from './markup.ts';
import { controlName, type Submitted } from './submittedAnswers.ts';

/** The answers of one new entry under a key of the report, such as a correction; each of them must be given. */
export function entryFields(key: string, name: string): readonly AnswerField[] {
  const schema = frontSchema(key);
  if (schema === undefined) return [];
  const entry = takesOf(schema).inside?.find(([step]) => step === '[]')?.[1] ?? schema;
  return answerFields({ schema: entry, answer: undefined, path: [name], required: true, called: null });
}

/** Their controls, with what was typed and could not be written, or else what is likely. */
export const entryControls = (
  fields: readonly AnswerField[],
  typed: Submitted | null,
  likely: Readonly<Record<string, string>> = {},
): readonly Markup[] =>
  fields.map((field) => {
    const own = likely[String(field.path.at(-1))];
    return control(field, {
      typed: typed?.[controlName(field)] ?? (own === undefined ? [] : [own]),
      inFile: null,
      problems: [],
      suggested: [],
      standing: null,
    });
  });

/** What was typed into them, by the last step of the way to each; a sentence where one is empty. */
export function readEntry(
  fields: readonly AnswerField[],
  submitted: Submitted,
): { readonly entry: Readonly<Record<string, string>> } | { readonly sentence: string } {
  const typed = fields.map((field) => ({
    field,
    text: (submitted[controlName(field)]?.[0] ?? '').replace(/\r\n?/g, '\n').trim(),
  }));
  const empty = typed.filter(({ text }) => text === '');
  if (empty.length > 0)
    return {
      sentence: `Nothing was written. Still empty: ${empty.map(({ field }) => field.label).join('; ')}.`,
    };
  return { entry: Object.fromEntries(typed.map(({ field, text }) => [String(field.path.at(-1)), text])) };
}
