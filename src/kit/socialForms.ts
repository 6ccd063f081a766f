import type { CardForm } from './cardForm.ts';
import { lastSteps, plansOf, type CardPlan } from './cardPlan.ts';

/**
 * Least letters, px, of what must be read where there is room at all: a square stands on a phone at a third of its size,
 * where 44 px are 14.7 px on a screen of 360 and 16 px on one of 393. A square with so few words at 48 px, the size of the
 * phone form of a chart, is tried first.
 */
const leastRead = 44;

/** Of what is looked up and not read, who hit and when, address and version: 11.3 px on a screen of 360. */
export const leastLookedUp = 34;

const first: CardPlan = {
  finding: 80,
  words: 30,
  lines: 5,
  text: 48,
  foot: 38,
  pairs: 3,
  picture: 3.4,
  caution: 'whole',
  whom: 'brief',
  interest: 'whole',
};

/** What gives way where names are long and much is stated; letters that must be read last. */
const steps: readonly Partial<CardPlan>[] = [
  { finding: 72 },
  { finding: 66 },
  { caution: 'brief' },
  { finding: 60 },
  { pairs: 2 },
  { text: leastRead, foot: leastLookedUp },
  { finding: 56 },
  { whom: 'when' },
  { words: 18 },
  { interest: 'few-words' },
  { pairs: 1 },
  { picture: 2.8 },
  { finding: 52 },
  { finding: 48 },
  { picture: 2.3 },
  { finding: 44 },
  { finding: 42 },
  // Smaller than is read on a small phone without a second look, but whole.
  { text: 42 },
  { text: 40 },
  { text: 38, finding: 40 },
  { text: 36 },
  { text: 34, finding: 38 },
  { caution: 'if-it-decides' },
  { text: 32, foot: 30 },
  { text: 28, foot: 26, finding: 34 },
  { text: 24, foot: 22, finding: 28, lines: Infinity },
  { picture: 0 },
  ...lastSteps,
];

const plans = plansOf(first, steps);

/** A square picture, 1080 x 1080. */
export const square: CardForm = {
  frame: { width: 1080, height: 1080, side: 46, above: 42, below: 32 },
  pairs: 'below',
  head: 'beside-stamp',
  air: 1,
  plans,
};

/** An upright picture, 1080 x 1350. */
export const upright: CardForm = { ...square, frame: { ...square.frame, height: 1350 } };
