import { frontAnswers } from '../intake/authored/front.ts';
import { interestQuestions } from '../intake/authored/interests.ts';
import { takesOf } from '../intake/authored/takes.ts';
import { dotted, isBlock, type Block, type Path } from '../intake/authored/tree.ts';
import { metrics, type MetricId } from '../trade/metrics.ts';
import { units } from '../trade/units.ts';
import { metricNamed } from '../intake/authored/metricName.ts';
import { answerFields, asChoice, type AnswerField } from './answerFields.ts';
import { fieldLabel } from './fieldLabel.ts';

/** Answers that belong together, under a heading of their own. */
export interface AnswerGroup {
  readonly id: string;
  readonly heading: string;
  readonly parts: readonly AnswerPart[];
}

/** The answers about one thing of a group: one contender, one golfer; the name is null where there is only one. */
export interface AnswerPart {
  readonly name: string | null;
  readonly fields: readonly AnswerField[];
}

const groupsOfKeys: readonly { id: string; heading: string; keys: readonly string[] }[] = [
  {
    id: 'test',
    heading: 'The test',
    keys: ['title', 'date', 'question', 'varied', 'primary', 'matters', 'columns', 'invented_data'],
  },
  { id: 'compared', heading: 'What was compared', keys: ['contenders', 'held'] },
  { id: 'golfers', heading: 'Who hit', keys: ['hitters'] },
  { id: 'interests', heading: 'What you have to gain', keys: ['interests'] },
  { id: 'conditions', heading: 'Where, and with what', keys: ['conditions'] },
  { id: 'plan', heading: 'What was decided before hitting', keys: ['plan'] },
];

/** Answers that the session files give, or that tell names apart: nothing to ask anybody. */
const notAsked: ReadonlySet<string> = new Set(['match', 'heading', 'positive', 'class', 'article']);

interface Known {
  /** Metrics that the session has columns for. */
  readonly measured: readonly MetricId[];
  /** The dotted keys of the answers that are missing. */
  readonly missing: ReadonlySet<string>;
}

/** All that a form asks about a report, group by group, with what its file answers. */
export function answerGroups(tree: Block, { measured, missing }: Known): readonly AnswerGroup[] {
  return groupsOfKeys.map(({ id, heading, keys }) => ({
    id,
    heading,
    parts: keys
      .flatMap((key) => partsOf(key, tree))
      .map(({ name, fields }) => ({
        name,
        fields: fields
          .filter(({ path }) => !notAsked.has(String(path.at(-1))))
          .map((field) => fitted(field, measured))
          // A list has a form of its own, or none yet.
          .filter(({ typed, control }) => typed.length < 2 || control === 'some-of')
          .map((field) => ({ ...field, required: field.required || missing.has(field.name) })),
      }))
      .filter(({ fields }) => fields.length > 0),
  }));
}

/** One part for each contender and each golfer; the loose answers of a group are one part. */
function partsOf(key: string, tree: Block): readonly AnswerPart[] {
  const schema = takesOf(frontAnswers).inside?.find(([step]) => step === `.${key}`)?.[1];
  if (schema === undefined) return [];
  const answer = tree[key];
  const fields = answerFields({ schema, answer, path: [key], required: !isOptionalBlock(key), called: null });
  if (!isBlock(answer) || !['contenders', 'hitters'].includes(key))
    return [{ name: key === 'held' ? 'The same for all' : null, fields }];
  const entries = Object.entries(answer);
  return entries.map(([id, one]) => ({
    name:
      key === 'contenders' ? (written(one, 'label') ?? id) : entries.length === 1 ? null : golfer(id, one),
    fields: fields.filter(({ path }) => path[1] === id),
  }));
}

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
const isOptionalBlock = (key: string): boolean =>
  !['title', 'date', 'question', 'varied', 'primary', 'contenders', 'hitters'].includes(key);

const at = (path: Path, ...way: readonly (string | null)[]): boolean =>
  path.length === way.length && way.every((step, index) => step === null || step === path[index]);

/** What only the session or the shop can say of an answer: which metrics there are, which units fit one. */
function fitted(field: AnswerField, measured: readonly MetricId[]): AnswerField {
  const { path } = field;
  if (at(path, 'primary') && measured.length > 0)
    return {
      ...field,
      help: null,
      control: 'some-of',
      choices: measured.map((id) => ({ value: id, words: metrics[id].name })),
      typed: field.typed.map((typed) => metricNamed(typed) ?? typed),
    };
  if (at(path, 'columns', null, 'unit')) {
    const metric = Object.values(metrics).find(({ id }) => id === path[1]);
    const fitting = Object.values(units).filter(
      (unit) => metric !== undefined && unit.dimensions.includes(metric.dimension),
    );
    const choices = fitting.map(({ id }) => asChoice(id));
    return choices.length === 0
      ? field
      : { ...field, label: `The unit of ${metric?.name ?? ''}`, help: null, control: 'one-of', choices };
  }
  const question = Object.entries(interestQuestions).find(([key]) => at(path, 'interests', key))?.[1];
  return question === undefined ? field : { ...field, label: fieldLabel(question) };
}

/** Every field of the groups in their order. */
export const fieldsOf = (groups: readonly AnswerGroup[]): readonly AnswerField[] =>
  groups.flatMap(({ parts }) => parts.flatMap(({ fields }) => fields));

/** The field to which a dotted key belongs: its own, or the nearest above or below it. */
export function fieldAt(fields: readonly AnswerField[], key: string): AnswerField | null {
  const under = (inner: string, outer: string): boolean =>
    inner.startsWith(`${outer}.`) || inner.startsWith(`${outer}[`);
  return (
    fields.find(({ path }) => dotted(path) === key) ??
    fields.find(({ name }) => under(key, name)) ??
    fields.find(({ name }) => under(name, key)) ??
    null
  );
}
