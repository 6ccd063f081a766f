import type { CardForm } from './cardForm.ts';
import { lastSteps, plansOf } from './cardPlan.ts';

/**
 * Size of a picture for videos, px, and the share of either side that screens may hide: EBU R 95 keeps graphics within a
 * "graphics safe area" and SMPTE ST 2046-1 titles within a "safe title area", both of nine tenths of width and height.
 */
export const videoWidth = 1920;
export const videoHeight = 1080;
const hidden = 0.05;
export const safeSide = videoWidth * hidden;
export const safeEdge = videoHeight * hidden;

/** Least letters, px: a screen of 1920 is often shown on half of it. */
export const leastInVideo = 28;

/** A whole picture, with every word and mark inside the safe area. */
export const video: CardForm = {
  frame: {
    width: videoWidth,
    height: videoHeight,
    side: safeSide + 2,
    above: safeEdge + 10,
    below: safeEdge + 6,
  },
  pairs: 'beside',
  head: 'apart',
  air: 1,
  plans: plansOf(
    {
      finding: 84,
      words: 30,
      lines: 3,
      text: 40,
      foot: 32,
      pairs: 3,
      picture: 3.4,
      caution: 'whole',
      whom: 'whole',
      interest: 'whole',
    },
    [
      { finding: 76 },
      { finding: 68 },
      { text: 36 },
      { caution: 'brief' },
      { foot: leastInVideo },
      { finding: 60 },
      { words: 18 },
      { text: 32 },
      { pairs: 2 },
      { interest: 'few-words' },
      { text: leastInVideo },
      { pairs: 1 },
      { finding: 52 },
      { whom: 'brief' },
      { picture: 2.5, finding: 44 },
      { caution: 'if-it-decides' },
      { finding: 36, lines: Infinity },
      { picture: 0 },
      ...lastSteps,
    ],
  ),
};

/** From the edge of the band to its words, px. */
const inset = 28;

/** Height of the safe part of the lower third, px. */
const third = videoHeight / 3 - safeEdge;

/** How high a band may be that has more to say than the lower third holds. */
const heights = [third, 380, 460, 560, videoHeight - 2 * safeEdge];

/** The band of a lower third: the first of these that is high enough stands on the lower edge of the safe area. */
export const lowerThirds: readonly CardForm[] = heights.map((height, index) => ({
  frame: { width: videoWidth - 2 * safeSide, height, side: inset, above: 20, below: 10 },
  pairs: 'told',
  head: 'beside-publisher',
  air: 0.5,
  plans: plansOf(
    {
      finding: 54,
      words: 30,
      lines: 2,
      text: 32,
      foot: leastInVideo,
      pairs: 1,
      picture: 1,
      caution: 'whole',
      whom: 'brief',
      interest: 'whole',
    },
    [
      { finding: 48 },
      { caution: 'brief' },
      { text: leastInVideo },
      { finding: 44 },
      { words: 18 },
      { interest: 'few-words' },
      { finding: 40 },
      { finding: 36 },
      ...(index === heights.length - 1 ? [{ lines: Infinity }, ...lastSteps] : []),
    ],
  ),
}));
