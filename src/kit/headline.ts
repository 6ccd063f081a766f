import type { DrawnFigure } from '../charts/figure.ts';
import { answerOfFigure } from './figureAnswer.ts';
import { figureFound, foundForms, furtherParts } from './figureFound.ts';
import { answerForms, cautionForms, decides } from './figureSentences.ts';
import { fitParts, withRoom } from './fitParts.ts';
import { onceEachFigure } from './onceEachFigure.ts';
import type { Report } from './report.ts';
import { said, type Said } from './said.ts';

/**
 * What stands over a chart that leaves its page: what this very chart found, with its measure, whom it names and how many
 * golfers hit, and that the answer hangs on what was left out or on one shot. Never stronger than the page.
 *
 * @param fits whether there is room for these sentences
 */
export function headline(
  report: Report,
  figure: DrawnFigure,
  fits: (sentences: readonly Said[]) => boolean,
): readonly Said[] {
  const { telling } = report;
  const answer = answerOfFigure(report, figure);
  const found = figureFound(report, figure);
  const told =
    found !== null
      ? [foundForms(found, figure, 1), ...furtherParts(found, figure, 4)]
      : answer !== null
        ? [answerForms(answer, telling, { bare: 1, unsized: 2, sized: 5, whole: 6 })]
        : [];
  const hangs = found?.tellsAnswer === false ? null : (answer?.cautions.find(decides) ?? null);
  return fitParts([...told, cautionForms(hangs, telling, { brief: 0.5, whole: null })], fits);
}

/** A headline for which there is room enough: what was found, without what may follow it. */
export const wholeHeadline = onceEachFigure(makeWholeHeadline);

function makeWholeHeadline(report: Report, figure: DrawnFigure): readonly Said[] {
  const found = figureFound(report, figure);
  const last = found?.forms.at(-1);
  if (last === undefined) return headline(report, figure, () => true);
  const answer = answerOfFigure(report, figure);
  const hangs = found?.tellsAnswer === true ? (answer?.cautions.find(decides) ?? null) : null;
  return fitParts(
    [
      withRoom(1, said('chart', last, figure.about)),
      cautionForms(hangs, report.telling, { brief: 0.5, whole: null }),
    ],
    () => true,
  );
}
