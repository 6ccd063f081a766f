import { expect, test } from 'vitest';
import { noAccount } from '../../../src/prose/english/charts/yards.ts';

test.each([
  ['too-few-shots', 'Too few shots have a launch to split a difference over.'],
  ['too-few-rounds', 'Too few shots have a launch to split a difference over.'],
  ['nothing-varied', 'Nothing about the launches varied.'],
  ['carry-out-of-reach', 'No flight model gives carries like these; conditions or data are unusual.'],
] as const)('a difference without an account says why: %s', (why, words) => {
  expect(noAccount({ state: 'not-possible', why })).toBe(words);
});
