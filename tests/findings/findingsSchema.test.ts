import { describe, expect, test } from 'vitest';
import { findingsJsonSchema } from '../../src/kit/publishedFindings.ts';

type Node = Readonly<Record<string, unknown>>;
const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const schema = JSON.parse(findingsJsonSchema()) as Node;

/** Every property of the schema by its path, with what stands for it. */
function propertiesOf(node: unknown, path = ''): (readonly [path: string, property: Node])[] {
  if (Array.isArray(node)) return node.flatMap((own) => propertiesOf(own, path));
  if (!isNode(node)) return [];
  const own = isNode(node.properties) ? Object.entries(node.properties) : [];
  return [
    ...own.flatMap(([key, property]) =>
      isNode(property)
        ? [[`${path}.${key}`, property] as const, ...propertiesOf(property, `${path}.${key}`)]
        : [],
    ),
    ...['items', 'anyOf', 'oneOf', 'allOf'].flatMap((key) => propertiesOf(node[key], path)),
  ];
}

/** What a property says of itself, or, where it may be null, what it says else. */
function descriptionOf(property: Node): unknown {
  if (property.description !== undefined) return property.description;
  const [described] = (Array.isArray(property.anyOf) ? property.anyOf : []).filter(isNode);
  return described?.description;
}

describe('the schema of the findings, for those who read the file', () => {
  const all = propertiesOf(schema);

  test('has an id, a title and the version', () => {
    expect([schema.$id, schema.title]).toEqual(['urn:straightface:findings:2', 'Findings of a report']);
    expect(all.find(([path]) => path === '.version')?.[1].const).toBe(2);
  });

  test('describes every field', () => {
    expect(all.length).toBeGreaterThan(300);
    const bare = all.filter(
      ([, property]) => typeof descriptionOf(property) !== 'string' && !isNode(property.properties),
    );
    expect(bare.map(([path]) => path)).toEqual([]);
  });

  test('describes every word that a field may hold, units aside', () => {
    const enums = all.flatMap(([path, property]) =>
      [
        property,
        ...(Array.isArray(property.anyOf) ? property.anyOf.filter(isNode) : []),
        property.items,
      ].flatMap((own) =>
        isNode(own) && Array.isArray(own.enum) && path !== '.metrics.unit' ? [[path, own] as const] : [],
      ),
    );
    expect(enums.length).toBeGreaterThan(30);
    for (const [path, own] of enums) {
      const meanings = (Array.isArray(own.oneOf) ? own.oneOf : []).filter(isNode);
      expect([path, meanings.map((meaning) => meaning.const)]).toEqual([path, own.enum]);
      expect(meanings.every(({ description }) => typeof description === 'string' && description !== '')).toBe(
        true,
      );
    }
  });
});
