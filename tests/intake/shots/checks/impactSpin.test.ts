import { describe, expect, it } from 'vitest';
import { impactSpin } from '../../../../src/flight/impactSpin.ts';
import { checkImpactSpin } from '../../../../src/intake/shots/checks/impactSpin.ts';
import { toCanonical } from '../../../../src/trade/units.ts';
import { said, sessionOf } from './sessionOf.ts';

describe('impactSpin', () => {
  it('is that of a solid sphere rolling off the face', () => {
    // By hand: 44.704 m/s x sin 13 deg / (1 + 0.04593/0.2 + 2.5) = 2.6963 m/s; x 2.5 / 0.021335 m = 315.95 rad/s.
    expect(impactSpin(toCanonical(100, 'mph'), 13)).toBeCloseTo((315.95 * 30) / Math.PI, 0);
  });

  it('gives 230 to 250 rpm a degree of spin loft with a driver', () => {
    // The planning figure of the trade for 100 to 105 mph: common practice, no source.
    const gain = impactSpin(toCanonical(102, 'mph'), 14) - impactSpin(toCanonical(102, 'mph'), 13);
    expect(gain).toBeGreaterThan(225);
    expect(gain).toBeLessThan(250);
  });
});

const row = { club_speed: 100, dynamic_loft: 14, attack_angle: 1 };

it('accepts spin within 40 % of the formula', () => {
  expect(checkImpactSpin(sessionOf([{ ...row, spin_rate: 2600 }]), {})).toEqual([]);
});

it('warns of far less, and tells the reader', () => {
  const [problem] = checkImpactSpin(sessionOf([{ ...row, spin_rate: 1500 }]), {});
  expect(problem).toMatchObject({ kind: 'spin-against-impact', severity: 'warning' });
  expect(said(problem)).toMatchInlineSnapshot(
    `"expected spin within 40 % of 3020 rpm, which club speed and spin loft suggest; found spin rate 1500 rpm; Ask whether the monitor measured the spin or estimated it; a strike high or low on the face, or a wet ball, does this too."`,
  );
  expect(problem?.forReader).toBe(
    'For 1 shot the spin does not fit the club speed and loft; it may be estimated rather than measured.',
  );
});

it('says nothing of wedges', () => {
  expect(checkImpactSpin(sessionOf([{ ...row, spin_rate: 1500 }]), { club: 'wedge' })).toEqual([]);
});
