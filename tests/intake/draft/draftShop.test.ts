import { describe, expect, test } from 'vitest';
import { fieldBlocks } from '../../../src/intake/authored/fields.ts';
import { readShop } from '../../../src/intake/authored/readShop.ts';
import { shopAnswers } from '../../../src/intake/authored/shop.ts';
import { draftShop } from '../../../src/intake/draft/draftShop.ts';

const text = draftShop();

describe('a first shop.yaml', () => {
  test('tells what must be filled in, and nothing else is wrong with it', () => {
    expect(readShop('shop.yaml', text).problems).toMatchObject([
      { kind: 'key-missing', columnName: 'name', cure: 'Write the answer after "name:".' },
    ]);
  });

  test('means the same as one with the name alone once that is written', () => {
    const filled = readShop('shop.yaml', text.replace('\nname:\n', '\nname: Example Golf Workshop\n'));
    expect(filled.problems).toEqual([]);
    expect(filled.shop).toEqual(readShop('shop.yaml', 'name: Example Golf Workshop\n').shop);
  });

  test('asks for every key of the first level, once, each under a comment', () => {
    const lines = text.split('\n');
    const [top] = fieldBlocks(shopAnswers);
    for (const { key } of top?.fields ?? []) {
      const at = lines.findIndex((line) => line.startsWith(`${key}:`));
      expect(
        lines.filter((line) => line.startsWith(`${key}:`)),
        key,
      ).toHaveLength(1);
      expect(lines[at - 1], key).toMatch(/^# /);
    }
    expect(top?.fields.length).toBeGreaterThan(5);
  });

  test('puts what an answer takes behind what it means, in plain words', () => {
    expect(text).toContain(
      '\n  # Where a visit is booked. A web address, such as https://golf.example/.\n  booking:\n',
    );
    expect(text).toContain('\n# Must be answered. The name of the shop.\nname:\n');
    expect(text).not.toMatch(/[`[\]]/);
    for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  });
});
