import { expect, test } from 'vitest';
import { inventedInList } from '../../src/prose/english/kit/standing.ts';

const invented = { inventedData: true };
const hit = { inventedData: false };

test('a list says first whether its shots are made up, and of how many reports', () => {
  expect(inventedInList([hit, hit])).toBeNull();
  expect(inventedInList([invented, invented])).toBe('Every shot in these reports is made up.');
  expect(inventedInList([invented, hit, hit])).toBe(
    'In one of these three reports the shots are made up; each says so.',
  );
});
