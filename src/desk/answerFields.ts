import { z } from 'zod';
import { isRealDate } from '../intake/authored/answers.ts';
import { meaningOf, takesOf, type Takes } from '../intake/authored/takes.ts';
import { dotted, isBlock, type Path, type Tree } from '../intake/authored/tree.ts';
import { metrics } from '../trade/metrics.ts';
import { fieldLabel } from './fieldLabel.ts';
import { plainWords } from './plainWords.ts';

/** One of the answers to choose from: as it is written, and as it is read. */
export interface Choice {
  readonly value: string;
  readonly words: string;
}

/** One answer as a form asks for it. */
export interface AnswerField {
  /** The way to it in the file. */
  readonly path: Path;
  /** The same in one word; the name of its control. */
  readonly name: string;
  /** What is asked, as the label of its control. */
  readonly label: string;
  /** What the answer may be; null where the label says it, or the choices do. */
  readonly help: string | null;
  readonly control: 'text' | 'lines' | 'day' | 'one-of' | 'some-of';
  /** The answers to choose from; none for the other controls. */
  readonly choices: readonly Choice[];
  /** An answer that many give; null where none can be foreseen. */
  readonly usual: string | null;
  /** Whether a report is refused without it. */
  readonly required: boolean;
  /** As it stands in the file; several where several were chosen, none where there is no answer. */
  readonly typed: readonly string[];
}

/** An answer that is read as it is written. */
export const asChoice = (value: string): Choice => ({ value, words: value });

interface Asked {
  readonly schema: z.core.$ZodType;
  readonly answer: Tree | undefined;
  readonly path: Path;
  readonly required: boolean;
  /** The words for it where its schema has none of its own. */
  readonly called: string | null;
}

/** Items of a build sheet that a form asks for even where the file has no line for them. */
const usualItems: readonly string[] = [
  'loft',
  'loft_measured',
  'shaft',
  'length',
  'head_weight',
  'condition',
];

/**
 * The answers that a form can ask for at one place of a file, as its schema describes them: a block becomes the answers
 * inside it, a line in words stays one. What is written as a list is left to the file, or to a form of its own.
 */
export function answerFields({ schema, answer, path, required, called }: Asked): readonly AnswerField[] {
  const takes = takesOf(schema);
  if (Array.isArray(answer)) {
    const texts = answer.filter((one) => typeof one === 'string');
    if (takes.inside !== undefined || texts.length !== answer.length) return [];
    return [{ ...oneField({ schema, answer: undefined, path, required, called }, takes), typed: texts }];
  }
  const block = isBlock(answer) ? answer : null;
  if (takes.items !== undefined && (block !== null || !isWritten(answer)))
    return itemFields(takes.items, block, path);
  const inside = takes.inWords !== undefined && block === null ? [] : (takes.inside ?? []);
  if (inside.length === 0) {
    if (block !== null) return [];
    return [oneField({ schema, answer, path, required, called }, takes)];
  }
  return inside.flatMap(([step, of]) => {
    if (step.startsWith('.<'))
      return entryFields(block ?? {}, of, { path, required, meaning: meaningOf(schema) });
    const key = step.slice(1);
    const optional = of instanceof z.ZodExactOptional;
    return answerFields({
      schema: of,
      answer: block?.[key],
      path: [...path, key],
      required: required && !optional,
      called: null,
    });
  });
}

const isWritten = (answer: Tree | undefined): boolean => typeof answer === 'string' && answer.trim() !== '';

/** The answers under keys that the shop chose: each contender, each golfer, each metric. */
function entryFields(
  block: { readonly [key: string]: Tree },
  schema: z.ZodType,
  {
    path,
    required,
    meaning,
  }: { readonly path: Path; readonly required: boolean; readonly meaning: string | null },
): readonly AnswerField[] {
  return Object.entries(block).flatMap(([key, answer]) =>
    answerFields({
      schema,
      answer,
      path: [...path, key],
      required,
      called: meaning === null ? null : `${meaning}: ${metricWords(key)}`,
    }),
  );
}

const metricWords = (key: string): string => Object.values(metrics).find(({ id }) => id === key)?.name ?? key;

function itemFields(
  items: Readonly<Record<string, string>>,
  block: { readonly [key: string]: Tree } | null,
  path: Path,
): readonly AnswerField[] {
  const keys = Object.keys(items).filter(
    (key) => usualItems.includes(key) || (block !== null && Object.hasOwn(block, key)),
  );
  return keys.flatMap((key) => {
    const answer = block?.[key];
    if (answer !== undefined && typeof answer !== 'string') return [];
    return [textField([...path, key], items[key] ?? key, answer)];
  });
}

function textField(path: Path, label: string, answer: string | undefined): AnswerField {
  const typed = answer === undefined || answer.trim() === '' ? [] : [answer];
  return {
    path,
    name: dotted(path),
    label: fieldLabel(label),
    help: null,
    control: /[\r\n]/.test(typed[0]?.trim() ?? '') ? 'lines' : 'text',
    choices: [],
    usual: null,
    required: false,
    typed,
  };
}

function oneField({ schema, answer, path, required, called }: Asked, takes: Takes): AnswerField {
  const typed = typeof answer === 'string' ? answer : undefined;
  const label = meaningOf(schema) ?? called ?? String(path.at(-1));
  const base = { ...textField(path, plainWords(label), typed), required };
  if (takes.choices !== undefined)
    return { ...base, control: 'one-of', choices: takes.choices.map(asChoice) };
  if (takes.control === 'day' && (typed === undefined || typed.trim() === '' || isRealDate(typed.trim())))
    return { ...base, control: 'day' };
  const words = plainWords(takes.inWords ?? takes.words);
  return { ...base, help: words === 'text' ? null : words, usual: firstExample(takes) };
}

/** The first example of an answer in words, which the reference sets in code. */
const firstExample = ({ inWords }: Takes): string | null => /`([^`]+)`/.exec(inWords ?? '')?.[1] ?? null;
