import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { fieldBlocks } from '../../src/intake/authored/fields.ts';
import { contenderAnswers } from '../../src/intake/authored/contender.ts';
import { frontAnswers } from '../../src/intake/authored/front.ts';
import { readReport } from '../../src/intake/authored/readReport.ts';
import { shopAnswers } from '../../src/intake/authored/shop.ts';
import { readWith } from '../../src/intake/authored/readWith.ts';
import { reference, withReference } from './reference.ts';

const readme = readFileSync('content/README.md', 'utf8');
const told = new Map();
const blocks = [...fieldBlocks(frontAnswers, told), ...fieldBlocks(shopAnswers, told)];

describe('the reference in content/README.md', () => {
  test('is what the schemas say; `npm run reference` writes it anew', () => {
    expect(withReference(readme)).toBe(readme);
  });

  test('says of every key what it takes and what it means', () => {
    const silent = blocks.flatMap(({ path, fields }) =>
      fields.filter(({ takes, means }) => takes === '' || means === '').map(({ key }) => `${path}.${key}`),
    );
    expect(silent).toEqual([]);
    expect(blocks.flatMap(({ fields }) => fields).length).toBeGreaterThan(100);
  });

  // The reading side of the schemas: an unknown key is refused with all the keys that there are.
  test.each([
    ['report.md', frontAnswers, ''],
    ['shop.yaml', shopAnswers, ''],
    ['contenders', contenderAnswers, 'contenders.<id>'],
  ] as const)('lists every key that %s may have', (_, schema, path) => {
    const read = readWith<unknown>(schema, { qqqqqqqqqqqqqqqq: 'x' });
    const unknown = 'troubles' in read ? read.troubles.find(({ kind }) => kind === 'unknown-key') : undefined;
    const known = unknown?.expected.replace('one of ', '').split(', ') ?? [];
    const block = blocks.find(
      (each) => each.path === path && each.fields.some(({ key }) => key === known[0]),
    );
    expect(block?.fields.map(({ key }) => key)).toEqual(known);
    expect(known.length).toBeGreaterThan(5);
  });

  test('says of every required key that it is: a report without it is refused', () => {
    const read = readReport('reports/x/report.md', '---\nsummary: x\n---\n');
    const missing = read.problems
      .filter(({ kind }) => kind === 'key-missing')
      .map(({ columnName }) => columnName);
    const required = blocks[0]?.fields.filter((field) => field.required).map(({ key }) => key) ?? [];
    expect(new Set(missing)).toEqual(new Set(required));
  });

  test('has no cell that breaks its table', () => {
    const rows = reference()
      .split('\n')
      .filter((line) => line.startsWith('|'));
    const columns = rows.map((row) => row.replaceAll('\\|', '').split('|').length - 2);
    expect(new Set(columns)).toEqual(new Set([3, 4]));
  });
});
