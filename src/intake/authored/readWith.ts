import { at } from '../../stats/at.ts';
import { z } from 'zod';
import { nearest } from './nearest.ts';
import { firstTold, layersOf } from './takes.ts';
import { asFound, dotted, isBlock, isUnanswered } from './tree.ts';
import { invalid, isTrouble, missing, type Schema, type Trouble, type Understood } from './trouble.ts';

/** Reads one answer with a schema; whatever zod has against it is told in our words. */
export function readWith<T>(schema: Schema<T>, answer: unknown): Understood<T> {
  const result = schema.safeParse(answer);
  if (result.success) return { value: result.data };
  const troubles = result.error.issues.flatMap((issue) => troublesOf(issue, schema, answer));
  // An answer that fails two checks of zod is one that cannot be used.
  return {
    troubles: troubles.filter((one, index) => !troubles.slice(0, index).some((other) => isSame(one, other))),
  };
}

/** An issue in our words; `path` leads to what it is about from the answer `typed`, which `schema` reads. */
function troublesOf(
  issue: z.core.$ZodIssue,
  schema: z.core.$ZodType,
  typed: unknown,
  path: readonly PropertyKey[] = issue.path,
): readonly Trouble[] {
  const trouble = issue.code === 'custom' ? issue.params?.['trouble'] : undefined;
  if (isTrouble(trouble)) return [{ ...trouble, path: path.map(asStep) }];
  const layers = layersOf(schema);
  const own = layers.at(-1);
  if (own instanceof z.ZodUnion) {
    const ifMissing = firstTold(schema, 'ifMissing');
    if (path.length === 0 && ifMissing !== undefined && isMissing(typed)) return [missing([], ifMissing)];
    const option = optionFor(own, typed);
    if (path.length > 0 || issue.code !== 'invalid_union') return troublesOf(issue, option, typed, path);
    const errors = at(issue.errors, own.options.indexOf(option));
    return errors.flatMap((error) => troublesOf(error, option, typed));
  }
  const [first, ...rest] = path;
  if (first !== undefined) {
    const step = asStep(first);
    return troublesOf(issue, schemaAt(own, step), itemAt(typed, step), rest).map((below) => ({
      ...below,
      path: [step, ...below.path],
    }));
  }
  if (issue.code === 'unrecognized_keys' && own instanceof z.ZodObject)
    return issue.keys.map((key) => unknownKey(key, Object.keys(own.shape), firstTold(own, 'unknownKey')));
  const sayings = firstTold(schema, 'sayings');
  if (sayings === undefined) throw new Error(`Nothing is said where an answer is ${issue.code}.`);
  const { kind = 'value-invalid', expected, cure } = sayings;
  if (own instanceof z.ZodObject ? isUnanswered(typed) : isMissing(typed)) return [missing([], expected)];
  const remedy = typeof cure === 'string' ? cure : cure(typed);
  return [{ ...invalid([], expected, asFound(typed), remedy), kind }];
}

/** The form of an answer that its shape is meant for: the last where none fits. */
function optionFor({ options }: z.ZodUnion, typed: unknown): z.core.$ZodType {
  const fits = (option: z.core.$ZodType): boolean => {
    const own = layersOf(option).at(-1);
    if (own instanceof z.ZodLiteral) return z.safeParse(option, typed).success;
    if (own instanceof z.ZodArray) return Array.isArray(typed);
    if (own instanceof z.ZodObject || own instanceof z.ZodRecord) return isBlock(typed);
    return typeof typed === 'string' && typed.trim() !== '';
  };
  const option = options.find(fits) ?? options.at(-1);
  if (option === undefined) throw new Error('A schema of several forms has none.');
  return option;
}

function schemaAt(schema: z.core.$ZodType | undefined, step: string | number): z.core.$ZodType {
  if (schema instanceof z.ZodArray) return schema.element;
  const inner: z.core.$ZodType | undefined = schema instanceof z.ZodObject ? schema.shape[step] : undefined;
  if (inner === undefined) throw new Error(`No schema of authored answers reads ${step}.`);
  return inner;
}

/** The answer there; one without an answer has been taken out of its block before it was read. */
function itemAt(typed: unknown, step: string | number): unknown {
  if (Array.isArray(typed)) return typed[Number(step)];
  const item = isBlock(typed) && Object.hasOwn(typed, step) ? typed[step] : undefined;
  return isUnanswered(item) ? undefined : item;
}

function unknownKey(key: string, keys: readonly string[], said = sayUnknown(keys)): Trouble {
  return { ...invalid([key], '', key, ''), ...said(key, nearest(key, keys)), kind: 'unknown-key', at: 'key' };
}

const sayUnknown =
  (keys: readonly string[]) =>
  (_: string, near: string | null): { readonly expected: string; readonly cure: string } =>
    near === null
      ? { expected: `one of ${keys.join(', ')}`, cure: 'Remove the line, or use one of the keys above.' }
      : { expected: `"${near}"`, cure: `Did you mean "${near}"?` };

const isSame = (a: Trouble, b: Trouble): boolean =>
  a.expected === b.expected && a.at === b.at && dotted(a.path) === dotted(b.path);

const isMissing = (typed: unknown): boolean => typed === undefined || typed === null || typed === '';
const asStep = (step: PropertyKey): string | number => (typeof step === 'number' ? step : String(step));
