import { expect, test } from 'vitest';
import { isWithinMatters } from '../../src/findings/withinMatters.ts';

test.each([
  ['both limits within what matters', [-4, 3], true],
  ['one a little beyond it, up to 15 % of it', [-5.75, 3], true],
  ['the upper one, likewise', [-1, 5.7], true],
  ['the lower one too far beyond', [-5.8, 3], false],
  ['the upper one too far beyond', [-3, 5.8], false],
] as const)('as good as within 5 of each other: %s', (_, ci, within) => {
  expect(isWithinMatters(ci, 5)).toBe(within);
});
