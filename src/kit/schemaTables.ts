import type { Table } from '../charts/table.ts';

type Tree = Readonly<Record<string, unknown>>;

const isTree = (value: unknown): value is Tree =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const trees = (value: unknown): readonly Tree[] => (Array.isArray(value) ? value.filter(isTree) : []);
const text = (value: unknown): string => (typeof value === 'string' ? value : '');

/** A key of a file by its path, or a word that may stand there, with what it means. */
interface Explained {
  readonly id: string;
  readonly meaning: string;
}

/**
 * What a JSON Schema says of a file, as two tables: every key by its path (`metrics[].pairs[].p`), and every word that
 * may stand in one (`verdict: clear`).
 *
 * @param name of the file
 */
export function schemaTables(schema: unknown, name: string): readonly [keys: Table, words: Table] {
  const table = (caption: string, head: string, rows: readonly Explained[]): Table => ({
    caption,
    head: [head, 'Meaning'],
    rows: rows.map(({ id, meaning }) => [id, meaning]),
  });
  return [
    table(`Every key of ${name}`, 'Key', keysIn(schema, '')),
    table(`Every word in ${name}`, 'Word', wordsIn(schema, '')),
  ];
}

/** The schema itself and what its unions hold. */
function formsOf(schema: Tree): readonly Tree[] {
  return [schema, ...trees(schema['anyOf']).flatMap(formsOf)];
}

/** Keys of an object, or of those that a list holds, with the schema of each. */
function partsOf(schema: unknown, path: string): readonly (readonly [path: string, part: Tree])[] {
  if (!isTree(schema)) return [];
  return formsOf(schema).flatMap((form) => {
    const { properties, items } = form;
    const own = isTree(properties) ? Object.entries(properties) : [];
    const named = own.flatMap(([key, part]) =>
      isTree(part) ? [[path === '' ? key : `${path}.${key}`, part] as const] : [],
    );
    return [...named, ...partsOf(items, `${path}[]`)];
  });
}

function keysIn(schema: unknown, path: string): readonly Explained[] {
  return partsOf(schema, path).flatMap(([id, part]) => [
    {
      id,
      meaning:
        text(part['description']) ||
        formsOf(part)
          .map(({ description }) => text(description))
          .join(''),
    },
    ...keysIn(part, id),
  ]);
}

/** Words are listed once, where they first may stand. */
function wordsIn(schema: unknown, path: string): readonly Explained[] {
  const all = allWordsIn(schema, path);
  return all.filter(
    (one, index) => all.findIndex(({ id, meaning }) => id === one.id && meaning === one.meaning) === index,
  );
}

function allWordsIn(schema: unknown, path: string): readonly Explained[] {
  return partsOf(schema, path).flatMap(([at, part]) => {
    const key = at.replace(/\[\]$/, '').replace(/^.*\./, '');
    const items = formsOf(part).flatMap(({ items: held }) => (isTree(held) ? formsOf(held) : []));
    const own = [...formsOf(part), ...items].flatMap((form) =>
      trees(form['oneOf']).flatMap(({ const: word, description }) =>
        typeof word === 'string' ? [{ id: `${key}: ${word}`, meaning: text(description) }] : [],
      ),
    );
    return [...own, ...allWordsIn(part, at)];
  });
}
