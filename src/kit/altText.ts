import type { DrawnFigure } from '../charts/figure.ts';
import { imageName } from '../charts/figure.ts';
import { sayMoreInReport, sayUnits } from '../prose/english/kit/altWords.ts';
import { golfersAndShots } from '../prose/english/kit/whoAndHow.ts';
import { standingWords } from '../prose/english/kit/standing.ts';
import { metricsIn, answerOfFigure } from './figureAnswer.ts';
import { figureFound, foundForms, furtherParts } from './figureFound.ts';
import { answerForms } from './figureSentences.ts';
import { always, fitParts, within, type Part } from './fitParts.ts';
import { onceEachFigure } from './onceEachFigure.ts';
import type { Report } from './report.ts';
import { said, textOf, type Said } from './said.ts';
import { countsIn } from './whoAndHow.ts';

/** Longest alternative text, characters: screen readers read it in one breath. The table has the rest. */
const longestAlt = 700;

/** Alternative text of a chart that stands alone. */
export const altText = onceEachFigure((report, figure) => textOf(altSentences(report, figure)));

/**
 * What it says: what the chart is of and in which units, for how many golfers and shots, its answer, and what it shows,
 * from beginning to end or not at all.
 */
export function altSentences(report: Report, figure: DrawnFigure, longest = longestAlt): readonly Said[] {
  const { telling, source, findings } = report;
  const answer = answerOfFigure(report, figure);
  const counts = countsIn(report, answer?.metric ?? null);
  const units = sayUnits(
    metricsIn(findings, figure).map(({ id }) => id),
    telling,
  );
  const opening = [
    [
      { weight: 0, said: said('chart', figure.question, figure.about) },
      { weight: 0.2, said: said('chart', `${imageName(figure)}.`, figure.about) },
    ],
    always(said('chart', units, figure.about)),
    always(said('who', `${golfersAndShots(telling, counts)}.`)),
    always(said('stamp', standingWords(source))),
  ];
  const found = figureFound(report, figure);
  const answered: Part =
    answer !== null
      ? answerForms(answer, telling, { bare: 1, unsized: 1.5, sized: 2, whole: 3 })
      : found === null
        ? []
        : foundForms(found, figure, 1);
  const described = always(said('chart', figure.description, figure.about));
  // Where all pairs are drawn, their description is the answer.
  const whole = fitParts([...opening, figure.chart === 'apart' ? [] : answered, described], within(longest));
  if (within(longest)(whole)) return whole;
  return fitParts(
    [
      ...opening,
      answered,
      ...(found === null ? [] : [foundForms(found, figure, 2), ...furtherParts(found, figure, 4)]),
      always(said('chart', sayMoreInReport)),
    ],
    within(longest),
  );
}
