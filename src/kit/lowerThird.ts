import { cardLayout, type Card } from './cardLayout.ts';
import type { Report } from './report.ts';
import { lowerThirds } from './videoForms.ts';

/** The band that is laid over a video: the statements of the video's card with its numbers in words. */
export function lowerThird(report: Report): Card {
  const [first, ...higher] = lowerThirds;
  if (first === undefined) throw new Error('There is no height for a lower third.');
  return higher.reduce(
    (card, form) => (card.fits ? card : cardLayout(report, form)),
    cardLayout(report, first),
  );
}
