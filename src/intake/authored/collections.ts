import { takesOf, type Takes } from './takes.ts';
import { asFound, isBlock, isUnanswered } from './tree.ts';
import {
  readWith,
  refused,
  unanswered,
  schemaOf,
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
  return schemaOf(takes, (answer): Understood<readonly T[]> => {
    if (answer === undefined) return unanswered(expected);
    if (!Array.isArray(answer)) {
      const cure = 'Begin each entry with a dash on a line of its own, or write [one, two].';
      return refused({ kind: 'value-invalid', path: [], expected, found: asFound(answer), cure });
    }
    const read = answer.map((item: unknown) => readWith(entry, item ?? ''));
    const troubles = read.flatMap((result, index) => below(index, result));
    if (troubles.length > 0) return refused(...troubles);
    return understood(read.flatMap((result) => ('value' in result ? [result.value] : [])));
  });
}

/** One entry by itself, or a list of them. */
export function oneOrMore<T>(entry: Schema<T>, expected: string): Schema<readonly T[]> {
  const list = listOf(entry, expected);
  const { words } = takesOf(entry);
  return schemaOf({ words: `${words}; or a list of such` }, (answer): Understood<readonly T[]> => {
    if (answer === undefined) return unanswered(expected);
    if (Array.isArray(answer)) return readWith(list, answer);
    const one = readWith(entry, answer);
    return 'value' in one ? understood([one.value]) : one;
  });
}

/** How the values of a block are read: all alike, or each as its key demands. */
type ValueSchema<K, V> = Schema<V> | ((key: K) => Schema<V>);

/**
 * A block whose keys the shop chooses: each key is read by `key`, its value by `value`; `takes` says what that is.
 * Gives pairs in the order in which an object keeps them.
 */
export function entriesOf<K, V>(
  key: Schema<K>,
  value: ValueSchema<K, V>,
  expected: string,
  takes: Takes,
): Schema<readonly (readonly [K, V])[]> {
  return schemaOf(takes, (answer): Understood<readonly (readonly [K, V])[]> => {
    if (answer === undefined) return unanswered(expected);
    if (!isBlock(answer)) {
      const cure = 'Write each as a key, a colon and a value, on indented lines or in { }.';
      return refused({ kind: 'value-invalid', path: [], expected, found: asFound(answer), cure });
    }
    const troubles: Trouble[] = [];
    const entries: (readonly [K, V])[] = [];
    const typedAs = new Map<K, string>();
    for (const [typed, item] of Object.entries(answer)) {
      // A key without a colon has been reported as such by whoever read the YAML.
      if (item === null) continue;
      const id = readWith(key, typed);
      const schema = typeof value !== 'function' ? value : 'value' in id ? value(id.value) : null;
      const read = schema === null ? null : readWith(schema, item);
      if ('troubles' in id)
        troubles.push(...below(typed, id).map((trouble): Trouble => ({ ...trouble, at: 'key' })));
      if (read !== null) troubles.push(...below(typed, read));
      if ('troubles' in id) continue;
      const earlier = typedAs.get(id.value);
      if (earlier !== undefined) {
        const cure = `Keep one of "${earlier}" and "${typed}".`;
        troubles.push({
          kind: 'value-invalid',
          path: [typed],
          at: 'key',
          expected: 'each once',
          found: typed,
          cure,
        });
      }
      typedAs.set(id.value, typed);
      if (read !== null && 'value' in read) entries.push([id.value, read.value]);
    }
    return troubles.length > 0 ? refused(...troubles) : understood(entries);
  });
}

/** Some of the keys K, each with its value. */
export type Keyed<K extends string, V> = { readonly [Key in K]?: V };

/** As `entriesOf`, as a record. */
export function recordOf<K extends string, V>(
  key: Schema<K>,
  value: ValueSchema<K, V>,
  expected: string,
  takes: Takes,
): Schema<Keyed<K, V>> {
  const entries = entriesOf(key, value, expected, takes);
  return schemaOf(takes, (answer): Understood<Keyed<K, V>> => {
    const read = readWith(entries, answer);
    if ('troubles' in read) return read;
    const record: { [Key in K]?: V } = {};
    for (const [id, value] of read.value) {
      // `__proto__` as a key must become a key.
      Object.defineProperty(record, id, { value, enumerable: true, configurable: true, writable: true });
    }
    return understood(record);
  });
}

/** A block of answers of which those without an answer count as not there. */
export function answeredOnly<T>(schema: Schema<T>): Schema<T> {
  return schemaOf(takesOf(schema), (answer): Understood<T> => {
    if (!isBlock(answer)) return readWith(schema, answer);
    return readWith(
      schema,
      Object.fromEntries(Object.entries(answer).filter(([, value]) => !isUnanswered(value))),
    );
  });
}

/** A short answer in words, or a block of answers: `monitor: camera`. `short` says in Markdown what the words tell. */
export function wordsOr<T>(words: (typed: string) => T, block: Schema<T>, short: string): Schema<T> {
  const takes = takesOf(block);
  return schemaOf(
    { ...takes, words: `${short}; or ${takes.words}`, inWords: short },
    (answer): Understood<T> =>
      typeof answer === 'string' && answer.trim() !== ''
        ? understood(words(answer.trim()))
        : readWith(block, answer),
  );
}

/** An answer checked further once it has been understood. */
export function checkedFurther<A, B>(schema: Schema<A>, read: (value: A) => Understood<B>): Schema<B> {
  return schemaOf(takesOf(schema), (answer): Understood<B> => {
    const first = readWith(schema, answer);
    return 'troubles' in first ? first : read(first.value);
  });
}

function below(step: string | number, result: Understood<unknown>): Trouble[] {
  return 'troubles' in result
    ? result.troubles.map((trouble) => ({ ...trouble, path: [step, ...trouble.path] }))
    : [];
}
