import { z } from 'zod';
import { nearest } from './nearest.ts';
import { asFound, isBlock, isUnanswered } from './tree.ts';
import { readWith, refused, unanswered, schemaOf, type Schema, type Trouble } from './trouble.ts';

type Camel<K extends string> = K extends `${infer Head}_${infer Tail}`
  ? `${Head}${Capitalize<Camel<Tail>>}`
  : K;

/** Keys as the code spells them: `supplied_by` in the file is `suppliedBy` here. */
type CamelKeys<T> = { readonly [K in keyof T as K extends string ? Camel<K> : K]: T[K] };

const camel = (key: string): string => key.replace(/_([a-z])/g, (_, letter: string) => letter.toUpperCase());

/**
 * A block of answers in which every key must be known. A key without an answer (`place:` and nothing more, or
 * `place: not recorded`) counts as not there. All that is wrong is reported, unknown keys with the nearest known one.
 */
export function strict<Shape extends Readonly<Record<string, z.ZodType>>>(
  shape: Shape,
): Schema<CamelKeys<z.output<z.ZodObject<Shape, z.core.$strict>>>> {
  type Output = CamelKeys<z.output<z.ZodObject<Shape, z.core.$strict>>>;
  const keys = Object.keys(shape);
  const object = z.strictObject(shape);
  const inside = keys.flatMap((key) => {
    const schema = shape[key];
    return schema === undefined ? [] : [[`.${key}`, schema] as const];
  });
  return schemaOf<Output>({ words: 'the answers below', inside }, (answer) => {
    const expected = `a block with the keys ${keys.join(', ')}`;
    if (isUnanswered(answer)) return unanswered(expected);
    if (!isBlock(answer)) {
      const cure = 'Write each answer under its key, on an indented line or in { }.';
      return refused({ kind: 'value-invalid', path: [], expected, found: asFound(answer), cure });
    }
    const known = Object.entries(answer).filter(
      ([key, value]) => Object.hasOwn(shape, key) && !isUnanswered(value),
    );
    // A key without a colon has been reported as such by whoever read the YAML.
    const unknown = Object.keys(answer).filter((key) => !Object.hasOwn(shape, key) && answer[key] !== null);
    const result = readWith(object, Object.fromEntries(known));
    const troubles = [
      ...unknown.map((key) => unknownKey(key, keys)),
      ...('troubles' in result ? result.troubles : []),
    ];
    if ('troubles' in result || troubles.length > 0) return refused(...troubles);
    const renamed = Object.fromEntries(
      Object.entries(result.value).map(([key, value]) => [camel(key), value]),
    );
    // The type above says of the keys what `camel` does to them.
    return { value: renamed as Output };
  });
}

function unknownKey(key: string, keys: readonly string[]): Trouble {
  const near = nearest(key, keys);
  return {
    kind: 'unknown-key',
    path: [key],
    expected: near === null ? `one of ${keys.join(', ')}` : `"${near}"`,
    found: key,
    at: 'key',
    cure: near === null ? 'Remove the line, or use one of the keys above.' : `Did you mean "${near}"?`,
  };
}
