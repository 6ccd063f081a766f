import { expect, it } from 'vitest';
import { checkSpinParts } from '../../../../src/intake/shots/checks/spinParts.ts';
import { said, sessionOf } from './sessionOf.ts';

it('accepts a right triangle', () => {
  // 3-4-5: axis atan(3/4) = 36.8699 deg.
  expect(
    checkSpinParts(sessionOf([{ spin_rate: 5000, back_spin: 4000, side_spin: 3000, spin_axis: 36.9 }]), {}),
  ).toEqual([]);
});

it('refuses a total and an axis that do not fit', () => {
  const problems = checkSpinParts(
    sessionOf([{ spin_rate: 4000, back_spin: 4000, side_spin: 3000, spin_axis: -36.9 }]),
    {},
  );
  expect(problems.map(({ kind, severity }) => [kind, severity])).toEqual([
    ['spin-parts-mismatch', 'error'],
    ['spin-parts-mismatch', 'error'],
  ]);
  expect(said(problems[0])).toMatchInlineSnapshot(
    `"expected 5000 rpm, which back and side spin make together; found spin rate 4000 rpm beside back spin 4000 rpm and side spin 3000 rpm; Check that the three columns are what their headings say; a column headed spin may be back spin."`,
  );
  expect(said(problems[1])).toContain(
    'expected 36.9 deg, which back and side spin make together; found spin axis -36.9 deg',
  );
});
