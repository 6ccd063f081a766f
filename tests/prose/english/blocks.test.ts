import { describe, expect, test } from 'vitest';
import type { AnswerBlock, AnswerStatement } from '../../../src/prose/statement.ts';
import { sayAnswer, sayAnswerAlone } from '../../../src/prose/english/answers.ts';
import { answerOfPair, tellingOf } from './told.ts';

const names = { a: 'Sorrel', b: 'Rowan', c: 'Tansy', d: 'Dogwood', e: 'Elm' };
const about = { of: 'metric', metric: 'carry' } as const;
const block = (...statements: readonly AnswerStatement[]): AnswerBlock => ({
  kind: 'answer',
  about,
  calculatedBy: null,
  statements,
});
const shafts = tellingOf('carry', 4, 'yd', { names, varied: 'shaft', matters: 4 });

describe('several pairs in one sentence', () => {
  test('one ahead of both others, one range for both', () => {
    const answers = [
      answerOfPair({ status: 'size-uncertain', d: [6, 2.4, 9.6] }),
      answerOfPair({ status: 'size-uncertain', behind: 'c', d: [7, 3, 10.9] }),
    ] as const;
    expect(
      sayAnswer(block({ kind: 'ahead-of', about, shared: 'ahead', answers, all: true }), shafts),
    ).toEqual(['Sorrel carried farther than both others, likely by 2 to 11 yards.']);
  });

  test('one ahead of two that are not alike sure, a range each', () => {
    const answers = [
      answerOfPair({ d: [12, 8.4, 14.9] }),
      answerOfPair({ status: 'size-uncertain', behind: 'c', d: [7, 2.2, 10.9] }),
    ] as const;
    expect(
      sayAnswer(block({ kind: 'ahead-of', about, shared: 'ahead', answers, all: true }), shafts),
    ).toEqual([
      'Sorrel carried farther than Rowan, likely by 8 to 15 yards, and than Tansy, likely by 2 to 11 yards.',
    ]);
  });

  test('two ahead of one', () => {
    const answers = [
      answerOfPair({ behind: 'c', d: [12, 8.4, 14.9] }),
      answerOfPair({ ahead: 'b', behind: 'c', d: [9, 5.2, 12.1] }),
    ] as const;
    expect(
      sayAnswer(block({ kind: 'ahead-of', about, shared: 'behind', answers, all: true }), shafts),
    ).toEqual(['Sorrel and Rowan both carried farther than Tansy, likely by 5 to 15 yards.']);
  });

  test('one that cannot be told from either', () => {
    const statement = {
      kind: 'cannot-place',
      about,
      id: 'c',
      others: ['a', 'b'],
      all: true,
      withinMatters: false,
      matters: 4,
    } as const;
    expect(sayAnswer(block(statement), shafts)).toEqual([
      'We cannot tell whether Tansy carried farther or less far than either.',
    ]);
    expect(sayAnswer(block({ ...statement, withinMatters: true }), shafts)).toEqual([
      'Tansy was within about 4 yards of both others in carry; we cannot say which carried farther.',
    ]);
  });

  test('none that can be told, and how far apart any two could be', () => {
    const statement = {
      kind: 'together',
      about,
      of: 'cannot-tell',
      ids: ['a', 'b', 'c'],
      matters: 4,
    } as const;
    expect(sayAnswer(block({ ...statement, most: 8.3 * 0.9144 }), shafts)).toEqual([
      'We cannot tell Sorrel, Rowan and Tansy apart in carry: any two could be up to 9 yards apart.',
    ]);
    expect(sayAnswer(block({ ...statement, ids: ['a', 'b', 'c', 'd'], most: null }), shafts)).toEqual([
      'We cannot tell the four shafts apart in carry.',
    ]);
    expect(sayAnswer(block({ ...statement, of: 'level', most: null }), shafts)).toEqual([
      'Sorrel, Rowan and Tansy carried alike: any difference between two of them is likely under 4 yards.',
    ]);
  });

  test('what the order leaves open, with the order in the same breath', () => {
    const open = { status: 'cause-unclear', because: 'one-after-another' } as const;
    const answers = [
      answerOfPair({ ...open, behind: 'c', d: [12, 8, 15] }),
      answerOfPair({ ...open, d: [6, 2, 10] }),
    ] as const;
    expect(sayAnswer(block({ kind: 'open', about, seen: true, answers }), shafts)).toEqual([
      'Sorrel went farther than Tansy and Rowan, but they were hit one after another, so we cannot say that it was the shaft.',
    ]);
    const all = [...answers, answerOfPair({ ...open, ahead: 'b', behind: 'c', d: [6, 2, 10] })] as const;
    expect(sayAnswer(block({ kind: 'open', about, seen: true, answers: all }), shafts)).toEqual([
      'Sorrel went farther than Tansy and Rowan, and Rowan farther than Tansy, but they were hit one after another, so we cannot say that it was the shaft.',
    ]);
  });
});

describe('four or more', () => {
  const leaders = {
    kind: 'leaders',
    about,
    by: 'more',
    leaders: ['a', 'b'],
    unplaced: ['e'],
    close: null,
    firstLook: false,
  } as const;

  test('leaders, those behind, and one that cannot be placed, in the same breath as the leaders', () => {
    expect(
      sayAnswer(block(leaders, { kind: 'behind', about, by: 'more', ids: ['d'], how: 'clear' }), shafts),
    ).toEqual([
      'Sorrel and Rowan carried farthest; we cannot tell them apart, nor Elm from any other.',
      'Dogwood carried clearly less far.',
    ]);
  });

  test('one that is behind some, yet cannot be told from the best', () => {
    expect(sayAnswer(block({ ...leaders, unplaced: [], close: { ids: ['e'], best: 'b' } }), shafts)).toEqual([
      'Sorrel and Rowan carried farthest; we cannot tell them apart, nor Elm from Rowan.',
    ]);
  });

  test('one leader, and others behind by little', () => {
    expect(
      sayAnswer(
        block(
          { ...leaders, leaders: ['a'], unplaced: [] },
          { kind: 'behind', about, by: 'more', ids: ['b', 'd'], how: 'size-uncertain' },
          { kind: 'behind', about, by: 'more', ids: ['e'], how: 'small' },
        ),
        shafts,
      ),
    ).toEqual([
      'Sorrel carried farthest.',
      'Rowan and Dogwood carried less far, by how much is uncertain.',
      'Elm carried less far, by too little to matter.',
    ]);
  });
});

describe('for whom', () => {
  const one = block({ kind: 'one', answer: answerOfPair({ d: [12, 8.4, 14.9] }) });
  const of = (hitters: number, unit: 'shot' | 'hitter') =>
    tellingOf('carry', 4, 'yd', { names, varied: 'shaft', matters: 4, design: { hitters, unit } });

  test('on the page: several golfers are told of, one stands beside it', () => {
    expect(sayAnswer(one, shafts)[0]).toBe(
      'Sorrel carried farther than Rowan: about 12 yards, likely 8 to 15.',
    );
    expect(sayAnswer(one, of(2, 'shot'))[0]).toBe(
      'On average over these two golfers, Sorrel carried farther than Rowan: about 12 yards, likely 8 to 15.',
    );
    expect(sayAnswer(one, of(8, 'hitter'))[0]).toBe(
      'For golfers like these, Sorrel carried farther than Rowan: about 12 yards, likely 8 to 15.',
    );
  });

  test('alone: what was tested and by how many', () => {
    expect(sayAnswerAlone(one, shafts)[0]).toBe(
      'In a test of shafts by one golfer, Sorrel carried farther than Rowan: about 12 yards, likely 8 to 15.',
    );
    expect(sayAnswerAlone(one, of(8, 'hitter'))[0]).toBe(
      'In a test of shafts by eight golfers, Sorrel carried farther than Rowan: about 12 yards, likely 8 to 15.',
    );
    expect(sayAnswerAlone(one, of(3, 'shot'))[0]).toBe(
      'In a test of shafts, on average over three golfers, Sorrel carried farther than Rowan: about 12 yards, likely 8 to 15.',
    );
  });

  test('whose calculation it rests on', () => {
    expect(sayAnswer({ ...one, calculatedBy: 'monitor' }, shafts)[0]).toBe(
      "By the monitor's own calculation, Sorrel carried farther than Rowan: about 12 yards, likely 8 to 15.",
    );
  });
});
