import { expect, it } from 'vitest';
import { checkSpinLoft } from '../../../../src/intake/shots/checks/spinLoft.ts';
import { said, sessionOf } from './sessionOf.ts';

it('accepts the difference to 0.3 degrees and rounding', () => {
  expect(checkSpinLoft(sessionOf([{ dynamic_loft: 13.4, attack_angle: -1.2, spin_loft: 15 }]), {})).toEqual(
    [],
  );
});

it('refuses a spin loft that subtracts the wrong way', () => {
  const [problem] = checkSpinLoft(
    sessionOf([{ dynamic_loft: 13.4, attack_angle: 1.2, spin_loft: 14.6 }]),
    {},
  );
  expect(problem).toMatchObject({ kind: 'spin-loft-mismatch', severity: 'error' });
  expect(said(problem)).toMatchInlineSnapshot(
    `"expected 12.2 deg, which is dynamic loft less attack angle; found spin loft 14.6 deg beside dynamic loft 13.4 deg and attack angle 1.2 deg; Check the sign of the attack angle, and that the columns are what their headings say."`,
  );
});

it('refuses a spin loft of zero or less', () => {
  expect(checkSpinLoft(sessionOf([{ dynamic_loft: 3, attack_angle: 3, spin_loft: 0 }]), {})).toHaveLength(1);
});
