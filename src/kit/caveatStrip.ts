import type { DrawnFigure } from '../charts/figure.ts';
import { charts } from '../charts/charts.ts';
import { dateInWords } from '../prose/date.ts';
import { addressAndVersion } from '../prose/english/kit/credit.ts';
import { changesWords, latestCorrection, stampWords } from '../prose/english/kit/standing.ts';
import { golfersShotsAndDay, golfersShotsAndOrder, leftOutWords } from '../prose/english/kit/whoAndHow.ts';
import { absoluteAddress, spokenAddress } from './absoluteAddress.ts';
import { answerOfFigure } from './figureAnswer.ts';
import { figureFound } from './figureFound.ts';
import { figureInterest } from './figureInterest.ts';
import { cautionForms, decides, orderCaution, readingOf } from './figureSentences.ts';
import { always, fitParts, type Part } from './fitParts.ts';
import { publisherOf } from './interestInShort.ts';
import type { Report } from './report.ts';
import { onceEachFigure } from './onceEachFigure.ts';
import { reportVersion } from './reportVersion.ts';
import { said, type Said } from './said.ts';
import { countsIn } from './whoAndHow.ts';

/**
 * What the strip says: what marks the report, what the chart's signs are, golfers, shots, order and day, how its readings
 * came about, the caution about this very answer, the interest that bears on it, address and version of the report.
 */
export function stripSentences(
  report: Report,
  figure: DrawnFigure,
  fits: (sentences: readonly Said[]) => boolean,
): readonly Said[] {
  const { shop, slug } = report.source;
  const address = absoluteAddress(shop)?.(`/reports/${slug}/`) ?? null;
  const where = address === null ? publisherOf(report) : spokenAddress(address);
  const { front, locale } = report.source;
  const day = latestCorrection(front) ?? front.published;
  const words = addressAndVersion(
    where,
    reportVersion(report.source),
    day === null ? null : dateInWords(day, locale),
  );
  return fitParts([...caveatParts(report, figure), always(said('credit', words))], fits);
}

/** What goes with a chart wherever it goes, but for its address. */
export function caveats(report: Report, figure: DrawnFigure): readonly Said[] {
  return fitParts(caveatParts(report, figure), () => true);
}

// Each of its pictures and pages asks for them anew, and differs only in the room it has.
const caveatParts = onceEachFigure(makeCaveatParts);

function makeCaveatParts(report: Report, figure: DrawnFigure): readonly Part[] {
  const { telling, source, findings } = report;
  const answer = answerOfFigure(report, figure);
  const interest = figureInterest(report, figure, answer);
  const found = figureFound(report, figure);
  const tellsAnswer = found === null || found.tellsAnswer || charts[figure.chart].answering;
  const caution =
    answer === null ? orderCaution(report, figure) : (answer.cautions.find(decides) ?? answer.beside);
  const counts = countsIn(report, answer?.metric ?? null);
  const day = dateInWords(source.front.date, source.locale);
  return [
    always(said('stamp', stampWords(source.front))),
    always(said('stamp', changesWords(source))),
    always(figure.signs.flatMap((text) => said('sign', text, figure.about))),
    [
      { weight: 0, said: said('who', golfersShotsAndDay(telling, counts, day)) },
      { weight: 2, said: said('who', golfersShotsAndOrder(telling, counts, day)) },
    ],
    always(said('who', leftOutWords(findings))),
    // A model's chart has it in its signs.
    charts[figure.chart].modelled ? [] : always(readingOf(report, figure)),
    cautionForms(caution, telling, { brief: tellsAnswer ? 0 : 2.5, whole: 3 }),
    always(interest.whole),
  ];
}
