/**
 * Why nothing was written where a file is not as the form was made of it.
 *
 * @param next where what was typed is by now, and what to do
 */
export const changedMeanwhile = (next: string): string =>
  `The file was changed meanwhile, in another window or by another program. Nothing was written. ${next}`;
