import { describe, expect, test } from 'vitest';
import type { SwingFindings, SwingPair } from '../../../src/findings/findings.ts';
import {
  saySwingAnswer,
  saySwingNumbers,
  saySwingSummary,
  saySwingUnmeasured,
  swingClause,
} from '../../../src/prose/english/swing.ts';
import { swingRow, swingSummary, swingUnmeasured } from '../../../src/prose/swing.ts';
import { capitalised } from '../../../src/prose/words.ts';
import { toCanonical } from '../../../src/trade/units.ts';
import { metricOf, tellingFor } from '../tellings.ts';

const mph = (value: number): number => toCanonical(value, 'mph');
const yd = (value: number): number => toCanonical(value, 'yd');

type Range = readonly [low: number, high: number];

/** Carry known to 3 yards either way, club speed to 0.8 mph; Heron minus Plover. */
const telling = (varied = 'ball') =>
  tellingFor(
    [
      metricOf({ metric: 'carry', verdict: 'clear', pair: { estimate: yd(9), ci: [yd(6), yd(12)] } }),
      metricOf(
        { metric: 'club_speed', verdict: 'too-close', pair: { estimate: 0, ci: [mph(-0.8), mph(0.8)] } },
        { role: 'exploratory', resolution: mph(0.1) },
      ),
      metricOf(
        { metric: 'attack_angle', verdict: 'too-close', pair: { estimate: 0.2, ci: [-1, 1.4] } },
        { role: 'exploratory', resolution: 0.1 },
      ),
      metricOf(
        { metric: 'face_to_path', verdict: 'too-close', pair: { estimate: 0.2, ci: [-1, 1.4] } },
        { role: 'exploratory', resolution: 0.1 },
      ),
    ],
    { names: { a: 'Heron', b: 'Plover' }, varied },
  );

const pairOf = (ci: Range, worth: Range, answer: SwingPair['answer'] = 'cannot-tell'): SwingPair => ({
  a: 'a',
  b: 'b',
  estimate: mph((ci[0] + ci[1]) / 2),
  ci: [mph(ci[0]), mph(ci[1])],
  worth: { estimate: yd((worth[0] + worth[1]) / 2), ci: [yd(worth[0]), yd(worth[1])] },
  across: null,
  answer,
});
const speed = (pair: SwingPair) => swingRow('club_speed', pair, { metric: 'carry' });

describe('a measure of the swing', () => {
  test.each<readonly [Range, Range, string]>([
    [[-0.74, 0.72], [-1.9, 1.8], 'within 0.8 mph of each other, worth up to 2 yards either way'],
    [
      [-0.2, 1.9],
      [-0.6, 4.8],
      'anything from 2.0 mph faster with Heron to 0.2 with Plover, worth anything from 5 yards for Heron to 1 for Plover',
    ],
    [[1.2, 2.4], [2.6, 7.8], '1.2 to 2.4 mph faster with Heron, worth 2 to 8 yards for Heron'],
    [[-2.4, -1.2], [-7.8, -2.6], '1.2 to 2.4 mph faster with Plover, worth 2 to 8 yards for Plover'],
    // Less of the measure may be worth more.
    [[1.2, 2.4], [-7.8, -2.6], '1.2 to 2.4 mph faster with Heron, worth 2 to 8 yards for Plover'],
    // What matters in club speed is a mile an hour: that is no threshold of the swing.
    [[-0.97, 0.95], [-1.9, 1.8], 'within 1.0 mph of each other, worth up to 2 yards either way'],
    [[-0.01, 0.01], [-0.02, 0.02], 'within 0.2 mph of each other, worth up to 1 yard either way'],
  ])('%j worth %j', (ci, worth, words) => {
    expect(saySwingNumbers(speed(pairOf(ci, worth)), telling())).toBe(`${capitalised(words)}.`);
  });

  test('with its answer in one clause', () => {
    const told = (answer: SwingPair['answer']): string =>
      swingClause(speed(pairOf([1.2, 2.4], [2.6, 7.8], answer)), telling());
    expect(told('different')).toMatch(
      /^club speed was not the same with Heron and Plover: 1\.2 to 2\.4 mph faster /,
    );
    expect(told('same')).toMatch(
      /^club speed was the same with Heron and Plover, as far as it matters: 1\.2 to /,
    );
  });

  test('answer and numbers apart', () => {
    const row = speed(pairOf([-0.74, 0.72], [-1.9, 1.8]));
    expect(saySwingAnswer(row, telling())).toBe(
      'We cannot tell whether club speed was the same with Heron and Plover.',
    );
    expect(saySwingNumbers(row, telling())).toBe(
      'Within 0.8 mph of each other, worth up to 2 yards either way.',
    );
  });

  test('what the model gives is never told finer than a yard', () => {
    const fine = tellingFor(
      [
        metricOf({ metric: 'carry', verdict: 'clear', pair: { estimate: yd(3), ci: [yd(2.4), yd(3.6)] } }),
        ...telling().findings.metrics.slice(1),
      ],
      { names: { a: 'Heron', b: 'Plover' } },
    );
    expect(saySwingNumbers(speed(pairOf([0.4, 0.8], [0.7, 2.3])), fine)).toMatch(
      /worth between almost nothing and 3 yards for Heron\.$/,
    );
  });

  test('an angle', () => {
    const own = pairOf([0, 0], [0.4, 3.4]);
    const row = swingRow('attack_angle', { ...own, ci: [0.4, 1.8], estimate: 1.1 }, { metric: 'carry' });
    expect(saySwingNumbers(row, telling())).toBe(
      '0.4 to 1.8 degrees more upward with Heron, worth between almost nothing and 4 yards for Heron.',
    );
  });
});

describe('path and face', () => {
  const path = (across: Range): SwingPair => ({
    ...pairOf([0, 0], [-0.4, 0.4]),
    estimate: 1.7,
    ci: [1.2, 2.2],
    across: { metric: 'side', estimate: yd((across[0] + across[1]) / 2), ci: [yd(across[0]), yd(across[1])] },
  });

  test.each<readonly [Range, RegExp]>([
    [[12.2, 19.7], /, worth up to 1 yard either way, and 12 to 20 yards to the side\.$/],
    [[-19.7, -12.2], /, worth up to 1 yard either way, and 12 to 20 yards to the side\.$/],
    [[-2.2, 7.7], /, worth up to 1 yard either way, and up to 8 yards to the side\.$/],
  ])('%j yards to the side are told beside the carry', (across, words) => {
    expect(saySwingNumbers(swingRow('face_to_path', path(across), { metric: 'carry' }), telling())).toMatch(
      words,
    );
  });

  test('without a price nothing is said of their worth but that it is not known', () => {
    const own: SwingPair = { ...path([0, 1]), worth: null, across: null, answer: 'not-known' };
    const row = swingRow('face_to_path', own, { metric: 'carry' });
    expect(saySwingAnswer(row, telling())).toBe(
      'We do not know whether face to path was the same with Heron and Plover.',
    );
    expect(saySwingNumbers(row, telling())).toMatch(
      /^1\.2 to 2\.2 degrees .* with Heron; what that is worth is not known, as the file lacks the launch direction or the spin axis\.$/,
    );
  });
});

describe('all measures together', () => {
  const swing = (...answers: readonly SwingPair['answer'][]): SwingFindings => ({
    metric: 'carry',
    margin: yd(2.5),
    level: 0.975,
    measures: answers.map((answer, index) => ({
      id: (['club_speed', 'attack_angle', 'club_path'] as const)[index] ?? 'club_speed',
      pricedBy: 'flight-model',
      perUnit: [1, 2],
      pairs: [pairOf([0, 1], [0, 1], answer)],
    })),
  });
  const told = (own: SwingFindings, varied = 'length'): string =>
    saySwingSummary(swingSummary(own), telling(varied));

  test('one differed; a ball cannot have made it', () => {
    expect(told(swing('different', 'same'))).toBe(
      'Club speed differed between lengths by enough to matter. The length may cause that; we cannot separate the two.',
    );
    expect(told(swing('different', 'different'), 'ball')).toBe(
      "Club speed and attack angle differed between balls by enough to matter. That was the golfer's doing, and we cannot separate it from the ball.",
    );
  });

  test('all the same, or nobody can tell, or too few', () => {
    expect(told(swing('same', 'same'))).toBe(
      'The swing was the same as far as we could measure: club speed and attack angle.',
    );
    expect(told(swing('same', 'cannot-tell'))).toBe('We cannot tell whether the swing was the same.');
    expect(told(swing('same', 'not-known'))).toBe('We cannot tell whether the swing was the same.');
    expect(told({ ...swing(), measures: [] })).toBe('There are too few readings of the swing to compare it.');
  });

  test('what nobody measured', () => {
    expect(saySwingUnmeasured(swingUnmeasured(swing('same')))).toBe(
      'Not measured: attack angle, club path and face to path.',
    );
    expect(saySwingUnmeasured([])).toBe('');
  });
});
