import type { CardForm } from './cardForm.ts';
import { cardLayout, type Card } from './cardLayout.ts';
import { lastSteps, plansOf } from './cardPlan.ts';
import { mostWords } from './shareCardWords.ts';
import type { Report } from './report.ts';

/** Size of the picture that a shared link shows, px: what is of another shape is cropped. */
export const cardWidth = 1200;
export const cardHeight = 630;

/** Least letters, px: a card is shown at a third of its size. */
export const leastText = 22;

const form: CardForm = {
  frame: { width: cardWidth, height: cardHeight, side: 56, above: 38, below: 24 },
  pairs: 'below',
  head: 'beside-publisher',
  air: 1,
  plans: plansOf(
    {
      finding: 52,
      words: mostWords,
      lines: 2,
      text: 25,
      foot: leastText,
      pairs: 1,
      picture: 3,
      caution: 'whole',
      whom: 'whole',
      interest: 'whole',
    },
    [
      { finding: 46 },
      { caution: 'brief' },
      { finding: 42 },
      { interest: 'few-words' },
      { text: 23 },
      { finding: 38 },
      { picture: 2.5 },
      { whom: 'brief' },
      { text: leastText },
      { finding: 34, lines: 3 },
      { picture: 2 },
      { finding: 30, lines: 4 },
      { caution: 'if-it-decides' },
      { finding: 26 },
      { finding: leastText, lines: Infinity },
      { picture: 0 },
      ...lastSteps,
    ],
  ),
};

/** The picture of a shared link, 1200 x 630: the first pair, and the finding in few words. */
export function shareCard(report: Report): Card {
  return cardLayout(report, form);
}
