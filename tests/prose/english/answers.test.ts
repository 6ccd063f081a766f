import { describe, expect, test } from 'vitest';
import { sayBesideBar, sayShort } from '../../../src/prose/english/answerWords.ts';
import { sayNumbers, sayPair } from '../../../src/prose/english/pairInWords.ts';
import { answerOfPair, tellingOf, type TypedAnswer } from './told.ts';

const names = { a: 'Heron', b: 'Wren', c: 'Plover' };

/** Every status as the house style prints it: typed by hand, read as an editor would. */
const told: readonly (readonly [name: string, answer: TypedAnswer, says: string])[] = [
  ['clear', { d: [11.7, 8.56, 14.86] }, 'Heron carried farther than Wren: about 12 yards, likely 8 to 15.'],
  [
    'clear, first look',
    { d: [11.7, 8.56, 14.86], firstLook: true },
    'On a first look Heron carried farther than Wren: about 12 yards, likely 8 to 15.',
  ],
  [
    'size uncertain',
    { status: 'size-uncertain', d: [6, 2.3, 10.4] },
    'Heron carried farther than Wren, by how much is uncertain: likely 2 to 11 yards.',
  ],
  [
    'size uncertain, from almost nothing',
    { status: 'size-uncertain', d: [5, 0.3, 9.6] },
    'Heron carried farther than Wren, by how much is uncertain: likely between almost nothing and 10 yards.',
  ],
  [
    'too little to matter',
    { status: 'small', d: [1.6, 0.4, 2.8] },
    'Heron carried about 2 yards farther than Wren, too little to matter.',
  ],
  [
    'alike',
    { status: 'level', d: [0.4, -3, 3.9], alike: true },
    'Heron and Wren carried alike: any difference is likely under 5 yards.',
  ],
  [
    'cannot tell',
    { status: 'cannot-tell', d: [0.5, -6, 7], alike: true },
    'We cannot tell whether Heron or Wren carried farther: anything from 7 yards for Heron to 6 for Wren.',
  ],
  [
    'cannot tell, within what matters',
    { status: 'cannot-tell', d: [0.5, -5.1, 5.6], alike: true, withinMatters: true },
    'Heron and Wren were within about 5 yards of each other in carry; we cannot say which carried farther.',
  ],
  [
    'hit one after another',
    {
      status: 'cause-unclear',
      d: [8, 2, 14],
      because: 'one-after-another',
      places: { ahead: 2, behind: 0, of: 3 },
    },
    'Heron went farther than Wren, but Heron was hit last and Wren first, so we cannot say that it was the ball.',
  ],
  [
    'order not known',
    { status: 'cause-unclear', d: [8, 2, 14], because: 'order-unknown' },
    'Heron went farther than Wren, but the order of the shots is not known, so we cannot say that it was the ball.',
  ],
  [
    'the one ahead hit later',
    { status: 'cause-unclear', d: [8, 2, 14], because: 'lever', hitLater: 'a' },
    'Heron went farther than Wren, but was mostly hit later, so we cannot say that it was the ball.',
  ],
  [
    'drift',
    { status: 'cause-unclear', d: [8, 2, 14], because: 'drift' },
    'Heron went farther than Wren, but results drifted during the test, so we cannot say that it was the ball.',
  ],
  [
    'few spells',
    { status: 'cause-unclear', d: [8, 2, 14], because: 'few-visits' },
    'Heron went farther than Wren, but each was hit in only a few spells, so we cannot say that it was the ball.',
  ],
  [
    'none seen, which the order could hide',
    { status: 'cannot-tell', d: [1, -6, 8], because: 'one-after-another', alike: true },
    'We saw no difference in carry between Heron and Wren, though the order of the shots could hide one.',
  ],
  [
    'not confirmed',
    { status: 'not-confirmed', d: [6, 1, 11], unconfirmed: { by: 2, of: 3 } },
    'Heron may carry farther than Wren; two of our three checks do not confirm it.',
  ],
  [
    'alike, not confirmed',
    { status: 'not-confirmed', d: [0.4, -3, 3.9], alike: true, unconfirmed: { by: 1, of: 1 } },
    'Heron and Wren may carry alike; our one check does not confirm it.',
  ],
  [
    'too few shots',
    { status: 'not-judged', notJudged: { because: 'too-few-shots', contenders: ['b'], fewest: 4 } },
    'We did not judge Wren: four shots are too few.',
  ],
  [
    'no reading',
    { status: 'not-judged', notJudged: { because: 'no-reading', contenders: ['a', 'b'], fewest: 0 } },
    'We did not judge Heron and Wren: there is no reading of carry.',
  ],
  [
    'every shot alike',
    { status: 'not-judged', notJudged: { because: 'all-alike', contenders: ['a', 'b'], fewest: null } },
    'We did not judge Heron and Wren: every reading is the same.',
  ],
  [
    'every shot with each alike',
    { status: 'not-judged', notJudged: { because: 'each-alike', contenders: ['a', 'b'], fewest: null } },
    'We did not judge Heron and Wren: the monitor gave one number for every shot with each, so luck cannot be told from the ball.',
  ],
];

test.each(told)('%s', (_name, answer, says) => {
  expect(sayPair(answerOfPair(answer), tellingOf('carry', 3.15, 'yd', { names, varied: 'ball' }))).toBe(says);
});

describe('other measures', () => {
  const plain = (id: string): string => ({ a: 'the hybrid', b: 'the fairway wood' })[id] ?? id;

  test('descent, of plain words', () => {
    const telling = tellingOf('descent_angle', 4.4, 'deg', { varied: 'club', the: plain });
    const answer = answerOfPair({
      metric: 'descent_angle',
      d: [10, 5.7, 14.2],
      unit: 'deg',
      firstLook: true,
    });
    expect(sayPair(answer, telling)).toBe(
      'On a first look the hybrid came down steeper than the fairway wood: about 10 degrees, likely 5 to 15.',
    );
  });

  test('spin, cause unclear, of something whose noun is a plural', () => {
    const telling = tellingOf('spin_rate', 500, 'rpm', {
      names: { a: 'Fresh', b: 'Worn' },
      varied: 'grooves',
    });
    const answer = answerOfPair({
      metric: 'spin_rate',
      status: 'cause-unclear',
      d: [2900, 2300, 3500],
      unit: 'rpm',
      because: 'one-after-another',
      places: { ahead: 0, behind: 2, of: 3 },
    });
    expect(sayPair(answer, telling)).toBe(
      'Fresh spun more than Worn, but Fresh was hit first and Worn last, so we cannot say that it was the grooves.',
    );
  });

  test('smash factor, alike and too little', () => {
    const telling = tellingOf('smash', 0.02, '1', { names: { a: 'Long', b: 'Short' }, varied: 'length' });
    const level = answerOfPair({
      metric: 'smash',
      status: 'level',
      d: [0, -0.01, 0.01],
      unit: '1',
      alike: true,
    });
    expect(sayPair(level, telling)).toBe(
      'Long and Short had much the same smash factor: any difference is likely under 0.02.',
    );
    const small = answerOfPair({ metric: 'smash', status: 'small', d: [0.01, 0.002, 0.015], unit: '1' });
    expect(sayPair(small, telling)).toBe(
      'Long had a smash factor about 0.01 higher than Short, too little to matter.',
    );
  });

  test('less is wanted: the one with less is named first', () => {
    const telling = tellingOf('spin_rate', 250, 'rpm', { names, varied: 'head' });
    const answer = answerOfPair({ metric: 'spin_rate', by: 'less', d: [900, 650, 1150], unit: 'rpm' });
    expect(sayPair(answer, telling)).toBe('Heron spun less than Wren: about 900 rpm, likely 600 to 1,200.');
  });
});

describe('numbers of a row', () => {
  const telling = tellingOf('carry', 3.15, 'yd', { names, varied: 'ball', matters: 4 });
  test.each([
    [[11.7, 8.56, 14.86], 'about 12 yards, likely 8 to 15'],
    [[6, 4.3, 7.7], 'about 6 yards, likely just over 4 to 8'],
    [[0.5, -0.3, 3.4], 'anything from just under 4 yards for Heron to almost nothing for Wren'],
    [[0.5, -6.2, 7.2], 'anything from 8 yards for Heron to 7 for Wren'],
  ] as const)('%j', (d, says) => {
    expect(sayNumbers(answerOfPair({ d }), telling)).toBe(says);
  });

  test('the status, with what weakens it', () => {
    expect(sayShort({ status: 'clear', firstLook: true })).toBe('Clear difference, first look');
    expect(sayShort({ status: 'cannot-tell', firstLook: true })).toBe('Cannot tell');
  });

  test('beside a bar that is drawn shot by shot, what was counted where that decides', () => {
    const d = [5, 0.5, 9.5] as const;
    expect(sayBesideBar(answerOfPair({ status: 'cannot-tell', d, spellsAlike: true }))).toBe(
      'Cannot tell, each spell counted as one',
    );
    expect(sayBesideBar(answerOfPair({ status: 'cannot-tell', d }))).toBe('Cannot tell');
    expect(sayBesideBar(answerOfPair({ d, spellsAlike: true }))).toBe('Clear difference');
  });
});
