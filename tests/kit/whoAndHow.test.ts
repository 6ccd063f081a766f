import { describe, expect, test } from 'vitest';
import { emailParts } from '../../src/kit/emailParts.ts';
import { readingWords } from '../../src/kit/whoAndHow.ts';
import { disclosure } from '../../src/prose/disclosure.ts';
import { around, reportOf } from '../findings/reportOf.ts';

const columnsRead = (report: ReturnType<typeof reportOf>): string =>
  disclosure({ ...report, version: '0' })
    .flatMap(({ items }) => items)
    .find(({ label }) => label === 'How each column was read')?.value ?? '';

describe('how the readings came about', () => {
  test('what nobody says was measured is not said to have been', () => {
    const silent = reportOf({ front: { conditions: '{monitor: radar}' } });
    expect(readingWords(silent)).toBe('How carry was read is not recorded.');
    expect(columnsRead(silent)).toBe('not stated; treated as measured: carry');
  });

  test('what the shop says stands', () => {
    const measured = reportOf({ front: { conditions: '{monitor: {columns: {carry: measured}}}' } });
    expect(readingWords(measured)).toBe('Carry was measured.');
    expect(columnsRead(measured)).toBe('measured: carry');
    const modelled = reportOf({ front: { conditions: '{monitor: {columns: {carry: modelled}}}' } });
    expect(readingWords(modelled)).toBe('Carry was calculated, not seen.');
  });

  test('one said and one not', () => {
    const report = reportOf({
      shots: {
        'Carry (yd)': { alder: around(237), birch: around(231).toReversed(), cedar: around(225) },
        'Ball Speed (mph)': { alder: around(150), birch: around(150), cedar: around(150) },
      },
      front: { primary: '[carry, ball_speed]', conditions: '{monitor: {columns: {carry: measured}}}' },
    });
    expect(readingWords(report)).toBe('Carry was measured. How ball speed was read is not recorded.');
    expect(columnsRead(report)).toBe('not stated; treated as measured: ball speed; measured: carry');
  });
});

test('a mail says once that one was not judged, and gives it no figure', () => {
  const report = reportOf({
    shots: {
      'Carry (yd)': { alder: around(237), birch: around(231).toReversed(), cedar: around(225).slice(0, 4) },
    },
  });
  const { gaps } = emailParts(report, (path) => `https://example.test${path}`, '0');
  const rows = gaps.flatMap((own) => own.rows);
  expect(rows.map(({ answer }) => answer)).toHaveLength(2);
  expect(rows.at(-1)).toEqual({ answer: 'Cedar: not judged, four shots are too few.', numbers: '' });
});
