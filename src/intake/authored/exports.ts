import { oneOf } from './answers.ts';
import { oneOrMore } from './collections.ts';

/**
 * Pictures that are made only where a shop asks for them, as each takes time at every build: `phone` of every chart
 * instead of the first alone, `other-units` in the units that the shop does not use, the others of the first chart.
 */
export const exportChoices = ['phone', 'other-units', 'square', 'upright', 'video', 'print'] as const;

export type ExportChoice = (typeof exportChoices)[number];

export const exportAnswers = oneOrMore(oneOf(exportChoices), 'a list of pictures to make besides').describe(
  'pictures that the editor’s page offers besides the wide one of each chart; each takes time at the build',
);
