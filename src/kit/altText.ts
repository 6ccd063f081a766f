import type { DrawnFigure } from '../charts/figure.ts';
import { imageName } from '../charts/figure.ts';
import { subjectOf } from './headline.ts';
import type { Report } from './report.ts';
import { fitSentences, sentencesOf } from './sentences.ts';
import { golfersAndShots } from './whoAndHow.ts';

/** Longest alternative text, characters: screen readers read it in one breath. The table has the rest. */
const longestAlt = 700;

/** Alternative text of a chart that stands alone: what it is of, for how many golfers and shots, what it shows. */
export function altText(report: Report, figure: DrawnFigure): string {
  const name = imageName({ question: figure.question, subject: subjectOf(figure) });
  return fitSentences(
    [
      { text: `${name}.`, rank: 0 },
      { text: `${golfersAndShots(report)}.`, rank: 0 },
      ...sentencesOf(figure.description).map((text, index) => ({ text, rank: index + 1 })),
    ],
    longestAlt,
  );
}
