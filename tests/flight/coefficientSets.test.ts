import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ballTest2001 } from '../../src/flight/ballTest2001.ts';
import { coefficientSets } from '../../src/flight/coefficientSets.ts';
import { naruo2004 } from '../../src/flight/naruo2004.ts';
import { smitsSmith1994 } from '../../src/flight/smitsSmith1994.ts';

describe('coefficient sets', () => {
  test('both at once are drag and lift, within what was measured and outside', () => {
    for (const set of coefficientSets) {
      for (const spin of [0, 0.02, 0.1, 0.3, 1.5]) {
        for (const reynolds of [0.5e5, 1.1e5, 1.8e5, 2.5e5]) {
          const flow = Float64Array.of(spin, reynolds, NaN, NaN);
          set.both(flow);
          expect([...flow]).toEqual([spin, reynolds, set.drag(spin, reynolds), set.lift(spin, reynolds)]);
        }
      }
    }
  });

  // Worked by hand from the published polynomials at Re 1.5e5: drag and lift, three decimals.
  test.each([
    ['naruo-2004', 0.05, 0.218, 0.12],
    ['naruo-2004', 0.1, 0.236, 0.171],
    ['naruo-2004', 0.15, 0.256, 0.215],
    ['naruo-2004', 0.2, 0.279, 0.254],
    ['naruo-2004', 0.3, 0.327, 0.314],
    ['ball-test-2001', 0.05, 0.224, 0.117],
    ['ball-test-2001', 0.1, 0.234, 0.16],
    ['ball-test-2001', 0.15, 0.259, 0.211],
    ['ball-test-2001', 0.2, 0.298, 0.269],
  ])('%s at S %f: %f and %f', (id, spin, drag, lift) => {
    const set = coefficientSets.find((one) => one.id === id);
    expect(set?.drag(spin, 1.5e5)).toBeCloseTo(drag, 3);
    expect(set?.lift(spin, 1.5e5)).toBeCloseTo(lift, 3);
  });

  // Smits & Smith 1994: CD = 0.24 + 0.18 S + 0.06 sin(pi (Re - 90000) / 200000), CL = 0.54 S^0.4. At Re 90000 the
  // sine is 0, at 190000 it is 1.
  test.each([
    [0.05, 0.249, 0.163],
    [0.1, 0.258, 0.215],
    [0.15, 0.267, 0.253],
    [0.2, 0.276, 0.284],
  ])('Smits and Smith at S %f: %f and %f', (spin, drag, lift) => {
    expect(smitsSmith1994.drag(spin, 90000)).toBeCloseTo(drag, 3);
    expect(smitsSmith1994.drag(spin, 190000)).toBeCloseTo(drag + 0.06, 3);
    expect(smitsSmith1994.lift(spin, 1.5e5)).toBeCloseTo(lift, 3);
  });

  // Balls of 2005 and 2007 on an indoor range (US patents 6,916,255 and 7,238,121, through transcriptions) against the
  // recommended fit: drag 0.946 of it at S 0.110 and about 0.945 at S 0.088, Re 1.8e5; lift 0.945 of it at S 0.110.
  test('later balls lie about 5 % below the recommended drag', () => {
    expect(0.227 / naruo2004.drag(0.11, 1.8e5)).toBeCloseTo(0.946, 2);
    expect(0.2185 / naruo2004.drag(0.088, 1.8e5)).toBeCloseTo(0.945, 2);
    expect(0.171 / naruo2004.lift(0.11, 1.8e5)).toBeCloseTo(0.945, 2);
  });

  test.each(coefficientSets.map((set) => [set.id, set] as const))(
    '%s: no spin no lift, finite and continuous everywhere',
    (_, set) => {
      expect(set.lift(0, 1e5)).toBe(0);
      fc.assert(
        fc.property(
          fc.double({ min: 0, max: 20, noNaN: true }),
          fc.double({ min: 0, max: 5e5, noNaN: true }),
          (spin, re) => {
            for (const f of [set.drag, set.lift]) {
              expect(Number.isFinite(f(spin, re))).toBe(true);
              expect(Math.abs(f(spin, re + 1) - f(spin, re))).toBeLessThan(1e-4);
              expect(Math.abs(f(spin + 1e-9, re) - f(spin, re))).toBeLessThan(1e-3);
            }
          },
        ),
      );
    },
  );

  test('every set says where it comes from and where it was measured', () => {
    expect(new Set(coefficientSets.map(({ id }) => id)).size).toBe(coefficientSets.length);
    for (const set of coefficientSets) {
      expect(set.source).toMatch(/(19|20)\d\d.*transcription/);
      expect(set.range.spinParameter[0]).toBeLessThan(set.range.spinParameter[1]);
      expect(set.range.reynolds[0]).toBeLessThan(set.range.reynolds[1]);
    }
    expect(coefficientSets[0]).toBe(naruo2004);
    expect(coefficientSets).toContain(ballTest2001);
  });
});
