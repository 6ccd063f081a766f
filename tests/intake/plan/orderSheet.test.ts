import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { joinOrderSheet } from '../../../src/intake/plan/joinOrderSheet.ts';
import { orderSheetCsv } from '../../../src/intake/plan/orderSheetCsv.ts';
import { readOrderSheet } from '../../../src/intake/plan/readOrderSheet.ts';
import { readShotFile } from '../../../src/intake/shots/readShotFile.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const sheetOf = (text: string) => readOrderSheet('reports/test/order.csv', bytes(text));
const said = (problems: ReturnType<typeof sheetOf>['problems']) =>
  problems.map(({ kind, line, column, found }) => `${kind} ${line}:${column}: ${found}`);

const letters = ['A', 'B', 'B', 'A', 'A', 'B'];
const plain = [
  'Shot,Round,Contender,Hit,Note',
  ...letters.map((letter, i) => `${i + 1},${(i >> 1) + 1},${letter},,`),
].join('\n');
const session = (numbers: readonly (number | string)[], heading = 'Shot'): string =>
  [`${heading},Carry (yd)`, ...numbers.map((number, i) => `${number},${230 + i}`)].join('\n');

function join(csv: string, sheet = plain, inOrder = true) {
  const file = readShotFile('reports/test/shots.csv', bytes(csv));
  const joined = joinOrderSheet(
    [file],
    sheetOf(sheet),
    (name) => ({ a: 'alder', b: 'birch' })[name.toLowerCase()] ?? null,
    inOrder,
  );
  const [first] = joined.shotFiles;
  if (first === undefined) throw new Error('no file');
  return {
    clubs: first.rows.map(({ club }) => club),
    rounds: first.rows.map(({ round }) => round),
    rows: first.rows,
    problems: [...joined.problems, ...first.problems],
  };
}

describe('an order sheet', () => {
  test('is read back as it was written, names with commas, quotes and formulas among them', () => {
    const order = ['x', 'y', 'z'].map((contender, index) => ({ shot: index + 1, round: 1, contender }));
    const labels: Record<string, string> = { x: 'Alder, 9°', y: 'The "old" one', z: '=2+3' };
    const read = sheetOf(orderSheetCsv(order, (id) => labels[id] ?? ''));
    expect(read.problems).toEqual([]);
    expect(read.entries.map(({ shot, contender, line }) => [shot, contender, line])).toEqual([
      [1, 'Alder, 9°', 2],
      [2, 'The "old" one', 3],
      [3, '=2+3', 4],
    ]);
  });

  test('may have been saved with semicolons, tabs, other cases, further columns and blank rows', () => {
    const read = sheetOf('shot;Who;CONTENDER;round\r\n4;me;Alder;1\r\n;;;\r\n5;me;Warm up;\r\n');
    expect(said(read.problems)).toEqual([]);
    expect(read.entries).toEqual([
      { shot: 4, round: 1, contender: 'Alder', note: null, line: 2 },
      { shot: 5, round: null, contender: null, note: null, line: 4 },
    ]);
  });

  test('says all that is wrong with it, by line and cell', () => {
    const read = sheetOf('Shot,Contender\n1,A\none,B\n1,B\n3,\n');
    expect(said(read.problems)).toEqual([
      'order-sheet-invalid 3:1: one',
      'order-sheet-invalid 4:1: 1, as in line 2',
      'order-sheet-invalid 5:2: null',
    ]);
    expect(said(sheetOf('Carry,Club\n200,A\n').problems)).toEqual(['order-sheet-invalid 1:null: Carry,Club']);
  });
});

describe('joined with a session that does not say what was hit', () => {
  test('by shot number, in whatever order the rows stand', () => {
    const { clubs, rounds, problems } = join(session([2, 1, 3, 4, 6, 5]));
    expect(clubs).toEqual(['B', 'A', 'B', 'A', 'B', 'A']);
    expect(rounds).toEqual([1, 1, 2, 2, 3, 3]);
    expect(said(problems)).toEqual(['club-from-order-sheet null:null: 6 shots without a name']);
    expect(problems[0]?.forReader).toBe(
      'The session file does not say what was hit; that was taken from the order sheet, shot by shot.',
    );
  });

  test('by place where the monitor counts from another number', () => {
    expect(join(session([11, 12, 13, 14, 15, 16])).clubs).toEqual(letters);
  });

  test('by place where the file has no numbers', () => {
    const { clubs, problems } = join(session([150, 151, 149, 150, 152, 148], 'Ball speed (mph)'));
    expect(clubs).toEqual(letters);
    expect(said(problems)).toEqual(['club-from-order-sheet null:null: 6 shots without a name']);
  });

  test('warm-up swings marked in the session are not on the sheet', () => {
    const csv = ['Carry (yd),Warm-up', '150,yes', ...letters.map((_, i) => `${230 + i},`)].join('\n');
    const { rows } = join(csv);
    expect(rows.filter(({ warmUp }) => !warmUp).map(({ club }) => club)).toEqual(letters);
    expect(rows.filter(({ warmUp }) => warmUp).map(({ club }) => club)).toEqual([null]);
  });

  test('or stand on the sheet alone', () => {
    const sheet = ['Shot,Contender', '1,warm-up', '2,A', '3,B'].join('\n');
    const { rows } = join(session([1, 2, 3]), sheet);
    expect(rows.map(({ club, warmUp }) => [club, warmUp])).toEqual([
      ['warm-up', true],
      ['A', false],
      ['B', false],
    ]);
  });
});

describe('is not used at all', () => {
  const none = { clubs: [], rounds: [], rows: [] };

  test('where the session has fewer shots: the place is the shot that it lacks', () => {
    const { problems, ...rest } = join(session([1, 2, 4, 5, 6]));
    expect(rest).toEqual(none);
    expect(said(problems)).toEqual([
      'order-sheet-mismatch 4:null: 5 shots in the session; the session lacks 3',
    ]);
  });

  test('where it has more', () => {
    expect(said(join(session([1, 2, 3, 4, 5, 6, 7])).problems)).toEqual([
      'order-sheet-mismatch null:null: 7 shots in the session; the sheet lacks 7',
    ]);
  });

  test('where a shot has been left out in the middle of as many numbers', () => {
    expect(said(join(session([1, 2, 3, 5, 6, 7])).problems)).toEqual([
      'order-sheet-mismatch null:null: 6 shots in the session, under numbers that the sheet does not list',
    ]);
  });

  test('where rows without numbers do not stand in hit order', () => {
    const csv = session([150, 151, 149, 150, 152, 148], 'Ball speed (mph)');
    expect(said(join(csv, plain, false).problems)).toEqual([
      'order-sheet-mismatch null:null: rows that do not stand in hit order and have other numbers',
    ]);
  });

  test('where it cannot be read', () => {
    const { problems, ...rest } = join(session([1, 2]), 'Shot,Contender\n1,A\n1,B');
    expect(rest).toEqual(none);
    expect(said(problems)).toEqual(['order-sheet-invalid 3:1: 1, as in line 2']);
  });
});

test('what the session says of a shot holds; where the sheet says otherwise, that is said', () => {
  const csv = ['Shot,Club,Carry (yd)', '1,A,230', '2,A,231', '3,B,232', '4,A,233', '5,A,234', '6,B,235'].join(
    '\n',
  );
  const { clubs, problems } = join(csv);
  expect(clubs).toEqual(['A', 'A', 'B', 'A', 'A', 'B']);
  expect(said(problems)).toEqual(['order-sheet-differs 3:null: A']);
});

test('messages say what was expected and what to do', () => {
  const told = (problems: ReturnType<typeof sheetOf>['problems']) =>
    problems.map(({ expected, cure }) => `${expected} | ${cure}`);
  expect(told(join(session([1, 2, 4, 5, 6])).problems)).toEqual([
    'the shots of the session, one row each; the order sheet lists 6 | Add a row for each shot hit beyond the plan, with what was hit; take out rows that were not hit; mark warm-up swings in the session, or list them with warm-up as contender.',
  ]);
  expect(told(join(session([1, 2, 3, 5, 6, 7])).problems)).toEqual([
    'the shots of the session, one row each; the order sheet lists 6 | Give each row of the order sheet the number under which the session has the shot.',
  ]);
  expect(told(sheetOf('Shot,Contender\none,B\n3,\n').problems)).toEqual([
    'the number of the shot | Write the number under which the monitor has the shot.',
    'a contender, or warm-up | Write what was hit with this shot, or take the row out if it was not hit.',
  ]);
  const differing = [
    'Shot,Club,Carry (yd)',
    '1,B,230',
    ...[2, 3, 4, 5, 6].map((n) => `${n},${letters[n - 1]},231`),
  ];
  expect(told(join(differing.join('\n')).problems)).toEqual([
    'A, as line 2 of the order sheet has it | What the session file says holds. Correct the order sheet if the order was changed while hitting.',
  ]);
});

// Whatever a spreadsheet does to the file, the reader gives entries or problems with a place, and never throws.
test('any text is read or refused', () => {
  fc.assert(
    fc.property(fc.array(fc.array(fc.string({ maxLength: 6 }), { maxLength: 6 })), (rows) => {
      const text = ['Shot;Contender', ...rows.map((cells) => cells.join(';'))].join('\n');
      const { entries, problems } = sheetOf(text);
      const numbers = entries.map(({ shot }) => shot);
      return (
        new Set(numbers).size === numbers.length &&
        problems.every(({ kind, file }) => kind.length > 0 && file === 'reports/test/order.csv')
      );
    }),
    { numRuns: 300, seed: 7 },
  );
});
