import { expect, test } from 'vitest';
import { planThatFits, plansOf, type CardPlan } from '../../src/kit/cardPlan.ts';

const first: CardPlan = {
  finding: 80,
  words: 30,
  lines: 3,
  text: 48,
  foot: 38,
  pairs: 3,
  picture: 3,
  caution: 'whole',
  whom: 'whole',
  interest: 'whole',
};

const plans = plansOf(first, [{ finding: 60 }, { pairs: 1 }, { text: 44 }, { interest: 'few-words' }]);

test('each plan gives up what its step names besides all that those before it gave up', () => {
  expect(plans.map(({ finding, pairs, text }) => [finding, pairs, text])).toEqual([
    [80, 3, 48],
    [60, 3, 48],
    [60, 1, 48],
    [60, 1, 44],
    [60, 1, 44],
  ]);
});

test('the first for which there is room is taken', () => {
  expect(planThatFits(plans, () => true)).toEqual(first);
});

test('what has room after all is taken back, pairs before letters', () => {
  // Room for 44 px letters with any pairs and any finding but the largest with three pairs.
  const fits = ({ text, pairs, finding }: CardPlan): boolean => text <= 44 && (pairs < 3 || finding < 80);
  expect(planThatFits(plans, fits)).toMatchObject({ text: 44, pairs: 3, finding: 60, interest: 'whole' });
});

test('without room for any the last is taken', () => {
  expect(planThatFits(plans, () => false)).toEqual(plans.at(-1));
});

test('a picture that was given up comes back at its least before letters grow', () => {
  const given = plansOf(first, [{ text: 44, picture: 2 }, { picture: 0 }, { interest: 300 }]);
  const fits = ({ interest, picture, text }: CardPlan): boolean =>
    interest === 300 && (picture === 0 || (text === 44 && picture <= 2));
  expect(planThatFits(given, fits)).toMatchObject({ text: 44, picture: 2, interest: 300 });
});
