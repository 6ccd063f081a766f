import { describe, expect, test } from 'vitest';
import type { AnswerBlock, AnswerStatement, PairAnswer } from '../../../src/prose/statement.ts';
import {
  sayAnswerCounted,
  sayAnswerFirst,
  sayAnswerInBrief,
  toldInBrief,
} from '../../../src/prose/english/answersInBrief.ts';
import { answerOfPair, tellingOf, type TypedAnswer } from './told.ts';

const names = { a: 'Heron', b: 'Wren', c: 'Plover', d: 'Dunlin' };
const balls = tellingOf('carry', 3, 'yd', { names, varied: 'ball', matters: 5 });
const about = { of: 'metric', metric: 'carry' } as const;
const one = (answer: PairAnswer): AnswerStatement => ({ kind: 'one', answer });
const block = (...statements: readonly AnswerStatement[]): AnswerBlock => ({
  kind: 'answer',
  about,
  calculatedBy: null,
  statements,
});

describe('one pair', () => {
  const cases: readonly (readonly [said: string, answer: TypedAnswer])[] = [
    ['Heron clearly past Wren, likely by 8 to 15 yd', { d: [12, 8.4, 14.9] }],
    [
      'on a first look Heron clearly past Wren, likely by 8 to 15 yd',
      { d: [12, 8.4, 14.9], firstLook: true },
    ],
    ['Heron past Wren, likely by up to 11 yd', { status: 'size-uncertain', d: [6, 0.1, 10.9] }],
    ['Heron past Wren by about 2 yd, too little to matter', { status: 'small', d: [2, 0.6, 3.4] }],
    ['Heron and Wren alike', { status: 'level', d: [0.4, -3, 3.4] }],
    ['cannot tell Heron and Wren apart', { status: 'cannot-tell', d: [1, -6, 8] }],
    [
      'no difference seen between Heron and Wren, though the order could hide one',
      { status: 'cannot-tell', because: 'few-visits', d: [1, -6, 8] },
    ],
    [
      'Heron past Wren, cause unclear (few spells)',
      { status: 'cause-unclear', because: 'few-visits', d: [6, 1, 11] },
    ],
    [
      'Heron past Wren, cause unclear (Heron mostly hit later)',
      { status: 'cause-unclear', because: 'lever', hitLater: 'a', d: [6, 1, 11] },
    ],
    ['Heron past Wren, not confirmed', { status: 'not-confirmed', d: [6, 1, 11] }],
    ['Heron and Wren alike, not confirmed', { status: 'not-confirmed', alike: true, d: [0, -3, 3] }],
    [
      'Wren not judged (four shots)',
      { status: 'not-judged', notJudged: { because: 'too-few-shots', contenders: ['b'], fewest: 4 } },
    ],
  ];
  test.each(cases)('%s', (said, answer) => {
    expect(toldInBrief(block(one(answerOfPair(answer))), balls, 'sized')).toBe(said);
  });

  test('of a measure that is no distance', () => {
    const clubs = tellingOf('descent_angle', 4.2, 'deg', {
      names: { a: 'Hybrid', b: 'Fairway wood' },
      varied: 'club',
      the: (id) => (id === 'a' ? 'the hybrid' : 'the fairway wood'),
    });
    const answer = answerOfPair({ metric: 'descent_angle', d: [10, 5.7, 14.2], unit: 'deg' });
    expect(toldInBrief(block(one(answer)), clubs, 'sized')).toBe(
      'the hybrid clearly steeper than the fairway wood, likely by 5 to 15°',
    );
  });
});

describe('a whole answer', () => {
  const clear = answerOfPair({ d: [12, 8.4, 14.9] });
  const unsure = answerOfPair({ behind: 'c', status: 'size-uncertain', d: [5, 1.2, 9.8] });
  const next = answerOfPair({ ahead: 'c', behind: 'b', status: 'size-uncertain', d: [7, 1.4, 11.9] });
  const ahead: AnswerStatement = {
    kind: 'ahead-of',
    about,
    shared: 'ahead',
    answers: [clear, unsure],
    all: true,
  };

  test('from the barest to sizes', () => {
    const told = block(ahead, one(next));
    expect(
      (['bare', 'unsized', 'sized'] as const).map((form) => sayAnswerInBrief(told, balls, form)),
    ).toEqual([
      'Carry of balls, one golfer: Heron past Plover, and both past Wren.',
      'Carry of balls, one golfer: Heron clearly past Wren and past Plover, size uncertain; Plover past Wren, size uncertain.',
      'Carry of balls, one golfer: Heron clearly past Wren, likely by 8 to 15 yd and past Plover, likely by 1 to 10 yd; Plover past Wren, likely by 1 to 12 yd.',
    ]);
  });

  test('whoever may equal a leader stands in the same breath', () => {
    const leaders: AnswerStatement = {
      kind: 'leaders',
      about,
      by: 'more',
      leaders: ['a'],
      unplaced: ['d'],
      close: { ids: ['c'], best: 'a' },
      firstLook: false,
    };
    for (const form of ['bare', 'unsized', 'sized'] as const)
      expect(sayAnswerInBrief(block(leaders), balls, form)).toBe(
        'Carry of balls, one golfer: Heron farthest; cannot tell Plover from Heron, nor Dunlin from any.',
      );
  });

  test('the first statement alone never names a leader whom another may equal', () => {
    const equal = answerOfPair({ behind: 'c', status: 'cannot-tell', d: [1, -6, 8] });
    const told = block(one(clear), one(equal), one(next));
    expect(sayAnswerFirst(told, [clear, equal, next], balls, 'bare')).toBeNull();
    const behind = answerOfPair({ ahead: 'b', behind: 'c', status: 'cannot-tell', d: [1, -6, 8] });
    const two: AnswerStatement = { ...ahead, answers: [clear, unsure] };
    expect(sayAnswerFirst(block(two, one(behind)), [clear, unsure, behind], balls, 'bare')).toBe(
      'Carry of balls, one golfer: Heron past Wren and Plover; the other pair: cannot tell.',
    );
  });

  test('pairs are counted where names are too long', () => {
    expect(sayAnswerCounted(block(ahead, one(next)), [clear, unsure, next], balls)).toBe(
      'Carry of balls, one golfer: of three pairs one clear, two size uncertain.',
    );
    expect(sayAnswerCounted(block(one(clear)), [clear], balls)).toBe(
      'Carry of balls, one golfer: clear difference.',
    );
  });

  test('who calculated it stands in the same breath', () => {
    expect(sayAnswerInBrief({ ...block(one(clear)), calculatedBy: 'flight-model' }, balls, 'bare')).toBe(
      'Carry of balls by our own flight model, one golfer: Heron past Wren.',
    );
  });
});
