import { expect, test } from 'vitest';
import { z } from 'zod';
import { findingsJsonSchema } from '../../src/kit/publishedFindings.ts';
import { schemaTables } from '../../src/kit/schemaTables.ts';

const colour = z.enum(['red', 'blue']).meta({
  description: 'of the ball',
  oneOf: [
    { const: 'red', description: 'as a cherry' },
    { const: 'blue', description: 'as the sky' },
  ],
});
const schema = z.toJSONSchema(
  z.strictObject({
    balls: z
      .array(z.strictObject({ colour: colour.nullable(), carry: z.number().describe('metres').nullable() }))
      .describe('a ball each'),
    seen: z.array(colour).describe('colours'),
  }),
);

test('every key by its path, every word once', () => {
  const [keys, words] = schemaTables(schema, 'balls.json');
  expect(keys).toEqual({
    caption: 'Every key of balls.json',
    head: ['Key', 'Meaning'],
    rows: [
      ['balls', 'a ball each'],
      ['balls[].colour', 'of the ball'],
      ['balls[].carry', 'metres'],
      ['seen', 'colours'],
    ],
  });
  expect(words.rows).toEqual([
    ['colour: red', 'as a cherry'],
    ['colour: blue', 'as the sky'],
    ['seen: red', 'as a cherry'],
    ['seen: blue', 'as the sky'],
  ]);
});

test('findings.json: no key twice', () => {
  const [keys] = schemaTables(JSON.parse(findingsJsonSchema()), 'findings.json');
  const ids = keys.rows.map(([id]) => id);
  expect(ids).toContain('metrics[].pairs[].verdict');
  expect(new Set(ids).size).toBe(ids.length);
});
