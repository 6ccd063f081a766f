import type { DrawnFigure } from '../charts/figure.ts';
import { imageName } from '../charts/figure.ts';
import type { Report } from './report.ts';
import { sentencesOf } from './sentences.ts';
import { golfersAndShots, standing } from './whoAndHow.ts';

/** Longest alternative text, characters: screen readers read it in one breath. The table has the rest. */
const longestAlt = 700;

const more = 'The report has the rest.';

/**
 * Alternative text of a chart that stands alone: what it is of, for how many golfers and shots, what it shows, from the
 * beginning as far as there is room: of sentences that refer to one before them none is left without it.
 */
export function altText(report: Report, figure: DrawnFigure, longest = longestAlt): string {
  const name = imageName(figure);
  const told = [
    `${name}.`,
    `${golfersAndShots(report)}.`,
    ...[standing(report)].filter((words) => words !== ''),
    ...sentencesOf(figure.description),
  ];
  const whole = told.join(' ');
  if (whole.length <= longest) return whole;
  let kept = told.length;
  const shortened = (): string => [...told.slice(0, kept), more].join(' ');
  while (shortened().length > longest) kept -= 1;
  return shortened();
}
