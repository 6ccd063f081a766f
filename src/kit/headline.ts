import type { DrawnFigure } from '../charts/figure.ts';
import { answerOfFigure } from './figureAnswer.ts';
import { answerForms, cautionForms, foundForms, shownBy } from './figureSentences.ts';
import { fitParts, withRoom } from './fitParts.ts';
import type { Report } from './report.ts';
import type { Said } from './said.ts';

/**
 * What stands over a chart that leaves its page: the answer that it is about, what it shows besides, and that the answer
 * hangs on what was left out or on one shot; of a chart without an answer what it is of and what was found. Never
 * stronger than the page, and it says of how many golfers it speaks.
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
  if (answer === null) return fitParts([foundForms(figure, telling)], fits);
  const decides = answer.cautions.find(({ facts: { overlay } }) => decisive.includes(overlay)) ?? null;
  return fitParts(
    [
      answerForms(answer, telling, { bare: 1, unsized: 2, sized: 5, whole: 6 }),
      withRoom(4, shownBy(figure)),
      cautionForms(decides, telling, { brief: 3, whole: null }),
    ],
    fits,
  );
}

/** Cautions under which the answer itself would be another one. */
const decisive: readonly string[] = ['depends-on-left-out', 'rests-on-one-shot'];

/** A headline for which there is room enough. */
export const wholeHeadline = (report: Report, figure: DrawnFigure): readonly Said[] =>
  headline(report, figure, () => true);
