import { z } from 'zod';
import { exportChoices, type ExportChoice } from '../intake/authored/exports.ts';
import { interestQuestions } from '../intake/authored/interests.ts';
import { shopAnswers } from '../intake/authored/shop.ts';
import { takesOf } from '../intake/authored/takes.ts';
import { isBlock, type Block } from '../intake/authored/tree.ts';
import type { MetricId } from '../trade/metrics.ts';
import { answerFields, asChoice, type AnswerField } from './answerFields.ts';
import type { AnswerGroup } from './answerGroups.ts';
import { fieldLabel } from './fieldLabel.ts';
import { frontSchema } from './frontSchema.ts';
import { keyGroups } from './keyGroups.ts';
import { gapsWithoutLine } from './metricAnswers.ts';

const groupsOfKeys = keyGroups(
  shopAnswers,
  [
    { id: 'who', heading: 'Who you are', keys: ['name', 'address', 'contact', 'interests'] },
    { id: 'brand', heading: 'Your name on the pages', keys: ['brand'] },
    { id: 'defaults', heading: 'What is the same in every report', keys: ['defaults'] },
    { id: 'reuse', heading: 'How others may use charts and data', keys: ['reuse'] },
    { id: 'exports', heading: 'Pictures and wording', keys: ['exports', 'strict'] },
  ],
  ['schema'],
);

/** Metrics by which shops test the most. */
const usualMetrics: readonly MetricId[] = ['carry', 'ball_speed', 'spin_rate'];

/**
 * All that a shop answers once for its reports, group by group.
 *
 * @param pictures names of the pictures that lie beside its file
 */
export const shopGroups = (tree: Block, pictures: readonly string[]): readonly AnswerGroup[] =>
  groupsOfKeys.map(({ id, heading, keys }) => ({
    id,
    heading,
    parts: [{ name: null, fields: keys.flatMap((key) => fieldsOf(key, tree, pictures)) }],
  }));

function fieldsOf(key: string, tree: Block, pictures: readonly string[]): readonly AnswerField[] {
  const schema = takesOf(shopAnswers).inside?.find(([step]) => step === `.${key}`)?.[1];
  if (schema === undefined) return [];
  const fields = answerFields({
    schema,
    answer: tree[key],
    path: [key],
    required: !(schema instanceof z.ZodExactOptional),
    called: null,
  });
  return (
    [...fields, ...(key === 'defaults' ? usualGaps(tree[key]) : [])]
      .filter(({ path }) => path.at(-1) !== 'supplied')
      .map((field) => fitted(field, pictures))
      // A list has a form of its own, or none yet.
      .filter(({ typed, control }) => typed.length < 2 || control === 'some-of')
  );
}

function usualGaps(defaults: Block[string] | undefined): readonly AnswerField[] {
  const schema = frontSchema('matters');
  if (schema === undefined) return [];
  const matters = isBlock(defaults) ? defaults['matters'] : undefined;
  return gapsWithoutLine({ of: usualMetrics, matters, schema, path: ['defaults', 'matters'] });
}

function fitted(field: AnswerField, pictures: readonly string[]): AnswerField {
  const [first, second] = field.path;
  if (first === 'exports')
    return {
      ...field,
      help: null,
      control: 'some-of',
      choices: exportChoices.map((value) => ({ value, words: exportWords[value] })),
    };
  if (first === 'brand' && (second === 'logo' || second === 'logo_dark')) {
    const names = [...new Set([...pictures, ...field.typed])];
    return names.length === 0
      ? field
      : {
          ...field,
          help: null,
          control: 'one-of',
          choices: [{ value: '', words: 'None' }, ...names.map(asChoice)],
        };
  }
  // The questions about money are asked in the same words as in a report.
  const [, question] =
    Object.entries(interestQuestions).find(([key]) => first === 'interests' && second === key) ?? [];
  return question === undefined || field.path.length !== 2
    ? field
    : { ...field, label: fieldLabel(question) };
}

const exportWords: Readonly<Record<ExportChoice, string>> = {
  phone: 'every chart for phones, not only the first',
  'other-units': 'in the units that you do not use',
  square: 'square',
  upright: 'upright',
  video: 'for videos',
  print: 'for print',
};
