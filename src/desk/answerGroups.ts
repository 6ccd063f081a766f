import { z } from 'zod';
import { dotted, isBlock, type Block } from '../intake/authored/tree.ts';
import type { Contender } from '../intake/authored/contender.ts';
import { frontAnswers } from '../intake/authored/front.ts';
import { idsIn } from '../intake/authored/idsIn.ts';
import { answerFields, type AnswerField } from './answerFields.ts';
import { fittedField, type SessionKnown } from './fittedField.ts';
import { frontSchema } from './frontSchema.ts';
import { directionsIn, gapsWithoutLine } from './metricAnswers.ts';
import { fieldsForAll } from './sameForAll.ts';
import { keyGroups } from './keyGroups.ts';
import { isIn } from './keysWithin.ts';

/** Answers that belong together, under a heading of their own. */
export interface AnswerGroup {
  readonly id: string;
  readonly heading: string;
  readonly parts: readonly AnswerPart[];
}

/** The answers about one thing of a group: one contender, one golfer; the name is null where there is only one. */
export interface AnswerPart {
  readonly name: string | null;
  /** What is to be known of it; none for most. */
  readonly note?: string;
  readonly fields: readonly AnswerField[];
}

/** Keys that other pages of the desk ask, or none: they come with files, with publication or after it. */
const elsewhere = [
  'published',
  'status',
  'withdrawn',
  'superseded_by',
  'aliases',
  'session',
  'exclusions',
  'claims',
  'corrections',
  'replies',
  'seen',
];

const groupsOfKeys = keyGroups(
  frontAnswers,
  [
    {
      id: 'test',
      heading: 'The test',
      keys: [
        'title',
        'date',
        'question',
        'summary',
        'varied',
        'primary',
        'better',
        'matters',
        'modelled',
        'columns',
        'rows',
        'order_sheet',
        'invented_data',
      ],
    },
    { id: 'compared', heading: 'What was compared', keys: ['contenders', 'held'] },
    { id: 'golfers', heading: 'Who hit', keys: ['hitters'] },
    { id: 'interests', heading: 'What you have to gain', keys: ['interests'] },
    { id: 'conditions', heading: 'Where, and with what', keys: ['conditions'] },
    { id: 'plan', heading: 'What was decided before hitting', keys: ['plan'] },
  ],
  elsewhere,
);

/** Answers that the session files give, or that tell names apart: nothing to ask anybody. */
const notAsked: ReadonlySet<string> = new Set(['match', 'heading', 'positive', 'class', 'article']);

interface Known extends SessionKnown {
  /** The dotted keys of the answers that are missing. */
  readonly missing: ReadonlySet<string>;
  /** What is compared and has a file of its own, by id; null where that cannot be used. */
  readonly sheetsOfContenders: ReadonlyMap<string, Contender | null>;
}

/** All that a form asks about a report, group by group, with what its file answers. */
export function answerGroups(tree: Block, known: Known): readonly AnswerGroup[] {
  return groupsOfKeys.map(({ id, heading, keys }) => {
    const parts = keys
      .flatMap((key) => partsOf(key, tree, known))
      .map((part) => ({ ...part, fields: part.fields.flatMap((field) => asAsked(field, known)) }));
    const forAll = fieldsForAll(parts.flatMap(({ fields }) => fields));
    return {
      id,
      heading,
      parts: [...(forAll.length === 0 ? [] : [{ ...answeredOnce, fields: forAll }]), ...parts].filter(
        ({ fields, note }) => fields.length > 0 || note !== undefined,
      ),
    };
  });
}

const answeredOnce = {
  name: 'One answer for all',
  note: 'It is taken for each of those below that has no answer of its own.',
};

/** A field as this report asks for it; none where it does not. */
function asAsked(field: AnswerField, known: Known): readonly AnswerField[] {
  if (notAsked.has(String(field.path.at(-1)))) return [];
  const fitted = fittedField(field, known);
  // A list has a form of its own, or none yet.
  if (fitted === null || (fitted.typed.length > 1 && fitted.control !== 'some-of')) return [];
  return [{ ...fitted, required: fitted.required || known.missing.has(fitted.name) }];
}

/** One part for each contender and each golfer; the loose answers of a group are one part. */
function partsOf(key: string, tree: Block, known: Known): readonly AnswerPart[] {
  const schema = frontSchema(key);
  if (schema === undefined) return [];
  const answer = tree[key];
  if (key === 'contenders' && Array.isArray(answer)) return partsElsewhere(idsIn(answer), known);
  const fields = [
    ...answerFields({ schema, answer, path: [key], required: !isOptionalBlock(schema), called: null }),
    ...(key === 'matters'
      ? gapsWithoutLine({ of: [tree['primary'] ?? []].flat(), matters: answer, schema, path: [key] })
      : []),
    ...(key === 'better' && isBlock(answer) ? directionsIn(answer, schema) : []),
  ];
  if (!isBlock(answer) || !['contenders', 'hitters'].includes(key))
    return [{ name: key === 'held' ? 'The same for all' : null, fields }];
  const entries = Object.entries(answer);
  return entries.map(([id, one]) => ({
    name:
      key === 'contenders' ? (written(one, 'label') ?? id) : entries.length === 1 ? null : golfer(id, one),
    fields: fields.filter(({ path }) => path[1] === id),
  }));
}

/** What is compared and is described for several reports at once, in files of its own. */
const partsElsewhere = (ids: readonly string[], { sheetsOfContenders }: Known): readonly AnswerPart[] =>
  ids.map((id) => ({
    name: sheetsOfContenders.get(id)?.label ?? id,
    note: `Described in contenders/${id}.yaml, for every report that names it.`,
    fields: [],
  }));

/** Who it is, as the session files call them: on the desk, and nowhere else. */
function golfer(id: string, one: unknown): string {
  const names = isBlock(one) ? one['match'] : undefined;
  const first: unknown = Array.isArray(names) ? names[0] : names;
  return typeof first === 'string' && first.trim() !== '' ? first : id;
}

const written = (one: unknown, key: string): string | null => {
  const text = isBlock(one) ? one[key] : undefined;
  return typeof text === 'string' && text.trim() !== '' ? text : null;
};

/** Blocks that need not be there: what is asked in them is required only where the report says so. */
const isOptionalBlock = (schema: z.ZodType): boolean => schema instanceof z.ZodExactOptional;

/** Every field of the groups in their order. */
export const fieldsOf = (groups: readonly AnswerGroup[]): readonly AnswerField[] =>
  groups.flatMap(({ parts }) => parts.flatMap(({ fields }) => fields));

/** The field to which a dotted key belongs: its own, or the nearest above or below it. */
export function fieldAt(fields: readonly AnswerField[], key: string): AnswerField | null {
  return (
    fields.find(({ path }) => dotted(path) === key) ??
    fields.find(({ name }) => isIn(key, name)) ??
    fields.find(({ name }) => isIn(name, key)) ??
    null
  );
}
