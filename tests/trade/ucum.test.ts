import { UcumLhcUtils } from '@lhncbc/ucum-lhc';
import { describe, expect, test } from 'vitest';
import { ucumCodes } from '../../src/trade/ucum.ts';
import { canonicalUnit, toCanonical, units } from '../../src/trade/units.ts';

// The tables of UCUM as the US National Library of Medicine publishes them.
const ucum = UcumLhcUtils.getInstance();

describe.each(Object.values(units).map((unit) => [unit.id, unit] as const))('%s', (id, { dimensions }) => {
  test('has a code that UCUM knows', () => {
    expect(ucum.validateUnitString(ucumCodes[id]).status).toBe('valid');
  });

  test('is as large as its code says', () => {
    expect(dimensions.length).toBeGreaterThan(0);
    for (const dimension of dimensions) {
      const { status, toVal } = ucum.convertUnitTo(ucumCodes[id], 1, ucumCodes[canonicalUnit[dimension]]);
      expect(status).toBe('succeeded');
      expect(toVal).toBeCloseTo(toCanonical(1, id), 14);
    }
  });
});

test('the tables refuse a code that is none, and tell a yard from a metre', () => {
  expect(ucum.validateUnitString('yards').status).toBe('invalid');
  expect(ucum.convertUnitTo('[yd_i]', 1, 'm').toVal).not.toBeCloseTo(1, 2);
});
