import { expect, test } from 'vitest';
import { nameInAddress } from '../../src/desk/nameInAddress.ts';

test.each([
  ['three-balls', 'three-balls'],
  [' /three-balls/ ', 'three-balls'],
  ['https://golf.example/tests/reports/three-balls/?units=metres#answer', 'three-balls'],
  ['reports/three-balls/details/', 'three-balls'],
  ['/reports/drei%20b%C3%A4lle/', 'drei bälle'],
  // What is no name is refused as it was typed.
  ['/reports/100%/', '100%'],
])('%s names %s', (typed, name) => {
  expect(nameInAddress(typed)).toBe(name);
});
