import { describe, expect, it } from 'vitest';
import { readNumeral } from '../../../src/intake/shots/numeral.ts';

describe.each([
  ['155.4', 155.4, null],
  ['155,4', null, 155.4],
  ['2650', 2650, 2650],
  ['2.650', 2.65, 2650],
  ['2,650', 2650, 2.65],
  ['0.650', 0.65, null],
  ['1,234.5', 1234.5, null],
  ['1.234,5', null, 1234.5],
  ['1,234,567', 1_234_567, null],
  ['1,23,456', null, null],
  ['12345,678', null, 12345.678],
  ['2 650', 2650, 2650],
  ['2\u00a0650,5', null, 2650.5],
  ["12'000", 12_000, 12_000],
  ['1.6120E+02', 161.2, null],
  ['.8', 0.8, null],
  [',8', null, 0.8],
  ['161.', 161, null],
  ['007', 7, 7],
  ['', null, null],
  ['.', null, null],
  ['1.2.3', null, null],
  ['1e999', null, null],
  ['1e', null, null],
  ['9'.repeat(41), null, null],
])('%s', (text, point, comma) => {
  it(`is ${point} with a point and ${comma} with a comma`, () => {
    const numeral = readNumeral(text);
    expect(numeral.point?.value ?? null).toBe(point);
    expect(numeral.comma?.value ?? null).toBe(comma);
  });
});

it('keeps the step a number is written in', () => {
  expect(readNumeral('155.40').point?.step).toBe(0.01);
  expect(readNumeral('2650').point?.step).toBe(1);
  expect(readNumeral('1.6120E+02').point?.step).toBe(0.01);
  expect(readNumeral('155,4').comma?.step).toBe(0.1);
});
