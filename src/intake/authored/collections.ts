import { z } from 'zod';
import { readWith } from './readWith.ts';
import { takesOf, telling, type Takes } from './takes.ts';
import { asFound, isBlock, isUnanswered } from './tree.ts';
import {
  given,
  invalid,
  missing,
  readBy,
  refused,
  understood,
  type Schema,
  type Trouble,
  type Understood,
} from './trouble.ts';

/** A list in which every entry is read alike. */
export function listOf<T>(entry: Schema<T>, expected: string): Schema<readonly T[]> {
  const { words, inside } = takesOf(entry);
  const takes: Takes =
    inside === undefined
      ? { words: `a list; each entry: ${words}` }
      : { words: `a list of ${words}`, inside: [['[]', entry]] };
  const cure = 'Begin each entry with a dash on a line of its own, or write [one, two].';
  return telling(z.array(entry), { takes, sayings: { expected, cure } });
}

/** One entry by itself, or a list of them. */
export function oneOrMore<T>(entry: Schema<T>, expected: string): Schema<readonly T[]> {
  const one = entry.transform((single): readonly T[] => [single]);
  return telling(z.union([listOf(entry, expected), one]), {
    takes: { words: `${takesOf(entry).words}; or a list of such` },
    ifMissing: expected,
  });
}

/** A block whose keys the shop chooses: what it is made of, what is expected of it, and how each answer is read. */
interface Entries<K, V> {
  readonly structure: z.ZodType;
  readonly takes: Takes;
  readonly expected: string;
  readonly key: Schema<K>;
  /** Null where the key does not tell. */
  readonly value: (key: K | null) => Schema<V> | null;
}

/** Its answers as pairs, in the order in which an object keeps them. */
export function entriesOf<K, V>({
  structure,
  takes,
  expected,
  key,
  value,
}: Entries<K, V>): Schema<readonly (readonly [K, V])[]> {
  return readBy(
    structure,
    (answer): Understood<readonly (readonly [K, V])[]> => {
      if (answer === undefined) return refused(missing([], expected));
      if (!isBlock(answer)) {
        const cure = 'Write each as a key, a colon and a value, on indented lines or in { }.';
        return refused(invalid([], expected, asFound(answer), cure));
      }
      const troubles: Trouble[] = [];
      const entries: (readonly [K, V])[] = [];
      const typedAs = new Map<K, string>();
      for (const [typed, item] of Object.entries(answer)) {
        // A key without a colon has been reported as such by whoever read the YAML.
        if (item === null) continue;
        const id = readWith(key, typed);
        const schema = value('value' in id ? id.value : null);
        const read = schema === null ? null : readWith(schema, item);
        if ('troubles' in id)
          troubles.push(...below(typed, id).map((each): Trouble => ({ ...each, at: 'key' })));
        if (read !== null) troubles.push(...below(typed, read));
        if ('troubles' in id) continue;
        const earlier = typedAs.get(id.value);
        if (earlier !== undefined) {
          const cure = `Keep one of "${earlier}" and "${typed}".`;
          troubles.push({ ...invalid([typed], 'each once', typed, cure), at: 'key' });
        }
        typedAs.set(id.value, typed);
        if (read !== null && 'value' in read) entries.push([id.value, read.value]);
      }
      return troubles.length > 0 ? refused(...troubles) : understood(entries);
    },
    takes,
  );
}

/** Some of the keys K, each with its value. */
export type Keyed<K extends string, V> = { readonly [Key in K]?: V };

/** Pairs as a record; `__proto__` as a key becomes a key. */
export function keyed<K extends string, V>(entries: readonly (readonly [K, V])[]): Keyed<K, V> {
  return Object.fromEntries(entries) as Keyed<K, V>;
}

/** A block of answers of which those without an answer count as not there. */
export function answeredOnly<T>(schema: Schema<T>): Schema<T> {
  return z.preprocess(
    (answer) =>
      isBlock(answer)
        ? Object.fromEntries(Object.entries(answer).filter(([, value]) => !isUnanswered(value)))
        : answer,
    schema,
  );
}

/** A short answer in words, or a block of answers: `monitor: camera`. `short` says in Markdown what the words tell. */
export function wordsOr<T>(words: Schema<T>, block: Schema<T>, short: string): Schema<T> {
  const takes = takesOf(block);
  return telling(z.union([words, block]), {
    takes: { ...takes, words: `${short}; or ${takes.words}`, inWords: short },
  });
}

/** An answer checked further once it has been understood. */
export function checkedFurther<A, B>(schema: Schema<A>, read: (value: A) => Understood<B>): Schema<B> {
  return schema.transform((value, context): B => given(read(value), context));
}

function below(step: string | number, result: Understood<unknown>): Trouble[] {
  return 'troubles' in result
    ? result.troubles.map((trouble) => ({ ...trouble, path: [step, ...trouble.path] }))
    : [];
}
