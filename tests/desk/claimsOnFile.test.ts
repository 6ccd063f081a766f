import { expect, test } from 'vitest';
import { claimsOnFile } from '../../src/desk/claimsOnFile.ts';

test('claims are handed on as they were typed, what is left empty as nothing', () => {
  const typed = { better: 'Heron', than: null, at: ['carry', null], about: { by: '5' } };
  expect(claimsOnFile({ tree: { claims: [typed, null, 'half a line'] } })).toEqual([
    { better: 'Heron', than: '', at: ['carry', ''], about: { by: '5' } },
    '',
    'half a line',
  ]);
});

test('a report without claims, or with a word in their place, has none', () => {
  expect(claimsOnFile({ tree: {} })).toEqual([]);
  expect(claimsOnFile({ tree: { claims: 'none' } })).toEqual([]);
  expect(claimsOnFile({ tree: null })).toEqual([]);
});
