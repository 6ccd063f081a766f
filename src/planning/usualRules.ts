/** What a plan says where nobody words it otherwise. */
export const usualExclusionRule =
  'only a reading that failed or an outside event, written down at once; never because of where the ball went';

export const usualStoppingRule = (shotsEach: number): string => `after ${shotsEach} shots with each`;

export const usualWarmUp =
  'ten full swings or more with a club outside the test, until the last five club speeds show no trend';
