import { expect, it } from 'vitest';
import { checkShotOrder } from '../../../../src/intake/shots/checks/shotOrder.ts';
import { said, sessionOf } from './sessionOf.ts';

const numbered = (...numbers: readonly number[]) =>
  numbers.map((shotNo) => ({ carry: 250, extra: { shotNo } }));

it('accepts a count without gaps, and one that starts again for each contender', () => {
  expect(checkShotOrder(sessionOf(numbered(1, 2, 3)), {})).toEqual([]);
  const rows = ['alder', 'birch'].flatMap((contender) =>
    [1, 2, 3].map((shotNo) => ({ carry: 250, extra: { shotNo, contender } })),
  );
  expect(checkShotOrder(sessionOf(rows), {})).toEqual([]);
});

it('accepts one count over two hitters who take turns', () => {
  const rows = ['one', 'two', 'two', 'one'].map((hitter, index) => ({
    carry: 250,
    extra: { hitter, shotNo: index + 1 },
  }));
  expect(checkShotOrder(sessionOf(rows, { hitters: ['one', 'two'] }), {})).toEqual([]);
});

it('counts the shots that are missing, and tells the reader', () => {
  const [problem] = checkShotOrder(sessionOf(numbered(1, 2, 5, 6, 9)), {});
  expect(problem).toMatchObject({ kind: 'shots-missing', severity: 'warning' });
  expect(said(problem)).toMatchInlineSnapshot(
    `"expected shot numbers without gaps; found 4 numbers are missing from the count; Say in the report why these shots are not in the file."`,
  );
  expect(problem?.forReader).toBe('Going by the shot numbers, 4 shots are missing from the file.');
});

it('takes warm-ups off the gaps', () => {
  expect(checkShotOrder(sessionOf(numbered(1, 2, 5, 6), { warmUps: 2 }), {})).toEqual([]);
  expect(checkShotOrder(sessionOf(numbered(4, 5, 8, 9), { warmUps: 5 }), {})).toEqual([]);
});

it('says that the count begins late, and tells the reader', () => {
  const [problem, ...more] = checkShotOrder(sessionOf(numbered(4, 5, 8, 9), { warmUps: 2 }), {});
  expect(more).toEqual([]);
  expect(problem).toMatchObject({ kind: 'first-shots-missing', severity: 'warning', line: 2 });
  expect(said(problem)).toMatchInlineSnapshot(
    `"expected a count of shots from 1; found a count from 4; If shots 1 to 3 were warm-ups or belong to somebody else, say so under "plan: {warm_up: ...}"; else export the session again."`,
  );
  expect(problem?.forReader).toBe('Shot numbers begin at 4: shots 1 to 3 are not in the file.');
  const [second] = checkShotOrder(sessionOf(numbered(2, 3)), {});
  expect(second?.forReader).toBe('Shot numbers begin at 2: shot 1 is not in the file.');
});

it('takes no late start amiss where warm-ups or the report tell of it', () => {
  expect(checkShotOrder(sessionOf(numbered(11, 12, 13), { warmUps: 10 }), {})).toEqual([]);
  expect(checkShotOrder(sessionOf(numbered(37, 38)), { startTold: true })).toEqual([]);
  expect(checkShotOrder(sessionOf(numbered(0, 1, 2)), {})).toEqual([]);
});

const inFiles = (files: Readonly<Record<string, readonly number[]>>) =>
  sessionOf(
    Object.entries(files).flatMap(([contender, numbers]) =>
      numbers.map((shotNo, index) => ({
        carry: 250,
        extra: { contender, shotNo, place: { file: `${contender}.csv`, line: index + 2 } },
      })),
    ),
  );

it('takes files that number on from each other for one count', () => {
  expect(checkShotOrder(inFiles({ alder: [1, 2, 3], birch: [4, 5, 6] }), {})).toEqual([]);
  expect(checkShotOrder(inFiles({ birch: [4, 5, 6], alder: [1, 2, 3] }), {})).toEqual([]);
  expect(checkShotOrder(inFiles({ alder: [1, 2, 3], birch: [1, 2, 3] }), {})).toEqual([]);
  const kinds = (files: Readonly<Record<string, readonly number[]>>) =>
    checkShotOrder(inFiles(files), {}).map(({ kind, file }) => `${kind} ${file}`);
  expect(kinds({ alder: [1, 2, 3, 4], birch: [3, 4] })).toEqual(['first-shots-missing birch.csv']);
  expect(kinds({ alder: [3, 4], birch: [5, 6] })).toEqual(['first-shots-missing alder.csv']);
});

it('finds no gap where one count was split into a file for each thing that was hit in turn', () => {
  expect(checkShotOrder(inFiles({ alder: [1, 3, 6], birch: [2, 4, 5] }), {})).toEqual([]);
  const [problem, ...more] = checkShotOrder(inFiles({ alder: [1, 3, 7], birch: [2, 4, 5] }), {});
  expect(more).toEqual([]);
  expect(problem?.forReader).toBe('Going by the shot numbers, 1 shot is missing from the file.');
  // Two counts of their own, the second from another number on, are no gap between them.
  expect(checkShotOrder(inFiles({ alder: [1, 2, 3], birch: [21, 22, 23] }), {})).toEqual([]);
});

it('refuses one number for two shots in a row', () => {
  const [problem] = checkShotOrder(sessionOf(numbered(1, 2, 2, 3)), {});
  expect(problem).toMatchObject({ kind: 'shot-number-repeated', severity: 'error', line: 4 });
  expect(said(problem)).toMatchInlineSnapshot(
    `"expected a number of its own for each shot; found shot 2 twice in a row, with different readings; Check whether it is one shot recorded twice; delete one row, or give the second its own number."`,
  );
});

const timed = ['10:30:00', '10:31:00', '10:30:30'].map((time) => ({ carry: 250, extra: { time } }));

it('refuses rows that are not in the order of their times', () => {
  const [problem] = checkShotOrder(sessionOf(timed), {});
  expect(problem).toMatchObject({ kind: 'times-not-rising', severity: 'error', line: 4 });
  expect(said(problem)).toMatchInlineSnapshot(
    `"expected rows in the order of hitting, so that times rise; found 10:30:30 below a later time; Sort the rows by time, or say "rows: not-in-hit-order" in the report; the order decides what a gap can be put down to."`,
  );
});

it('lets them pass where the report says that the rows are not in hit order', () => {
  expect(checkShotOrder(sessionOf(timed), { inHitOrder: false })).toEqual([]);
});
