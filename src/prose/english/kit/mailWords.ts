import type { Source } from '../../../intake/authored/source.ts';
import { metrics } from '../../../trade/metrics.ts';
import { dateInWords } from '../../date.ts';
import { formatNumber } from '../../numbers.ts';
import type { PairAnswer } from '../../statement.ts';
import type { Chance } from '../../reach.ts';
import { printingFor, type Telling } from '../../telling.ts';
import { capitalised, countWord, uncapitalised } from '../../words.ts';
import { comparisonOf } from '../comparisons.ts';
import { orderInWords } from '../order.ts';
import { atLeastWords, mattersWords } from '../ranges.ts';
import { sizeWords, wholeThings } from '../reach.ts';

/** A number that a mail shows large, and what it is of. */
export interface MailFigure {
  readonly value: string;
  readonly label: string;
}

/** Labels and fixed words of mails. */
export const mailWords = {
  inBrowser: 'Read it in a browser',
  interest: 'Our interest',
  caution: 'Keep in mind',
  sure: 'How sure',
  whom: 'Who hit',
  readings: 'Shots and readings',
  ownSite: 'Our own site',
  wholeReport: 'Read the whole report',
  notAFitting: 'A comparison is not a fitting; try clubs with a qualified fitter.',
  /** What whoever sends the mail puts in: the law of most places asks for both. */
  toFill: ['[Postal address of the sender]', '[Link to unsubscribe]'],
  /** "Carry of balls, one golfer: clear difference". */
  answerHeading: (of: string, status: string): string => `${of}: ${uncapitalised(status)}`,
  day: ({ front, locale }: Pick<Source, 'front' | 'locale'>): string =>
    `Hit ${dateInWords(front.date, locale)}.`,
} as const;

/** "143 of 144", pairings in which the one ahead had more. */
export function pairingsFigure(
  { answer, more, of }: { readonly answer: PairAnswer; readonly more: number; readonly of: number },
  telling: Telling,
): MailFigure {
  const { verb, [answer.by]: word } = comparisonOf(answer.about.metric);
  return {
    value: `${formatNumber(more, Number.isInteger(more) ? 0 : 1)} of ${formatNumber(of, 0)}`,
    label: `pairings of one shot with each in which ${telling.the(answer.ahead)} ${verb} ${word} than ${telling.the(answer.behind)}`,
  };
}

/** "Just under 6 yards", a difference that so long a test finds four times in five. */
export function reachFigure(
  metric: PairAnswer['about']['metric'],
  least: number,
  telling: Telling,
): MailFigure {
  return {
    value: capitalised(atLeastWords(least, printingFor(metric, telling))),
    label: `a real difference in ${metrics[metric].name} of this size would be found four times in five`,
  };
}

/** "2 yards", how far apart identical things come out by chance. */
export function chanceFigure({ metric, things, average }: Chance, telling: Telling): MailFigure {
  return {
    value: sizeWords(average, printingFor(metric, telling)),
    label: `how far apart in ${metrics[metric].name} ${countWord(things)} identical ${wholeThings(telling)} typically come out by chance alone`,
  };
}

/** "2", golfers. */
export function golfersFigure({ findings: { design } }: Telling): MailFigure {
  return { value: formatNumber(design.hitters, 0), label: design.hitters === 1 ? 'golfer' : 'golfers' };
}

/** "12", shots with each ball; `counts` are the counted shots with each. */
export function shotsFigure(counts: readonly number[], { findings, noun }: Telling): MailFigure {
  const [least, most] = [Math.min(...counts), Math.max(...counts)];
  return {
    value: least === most ? formatNumber(most, 0) : `${formatNumber(least, 0)} to ${formatNumber(most, 0)}`,
    label: `${most === 1 ? 'shot' : 'shots'} with each ${noun}, ${orderInWords(findings.design.order)}`,
  };
}

/** "4 yards", the smallest difference that matters. */
export function mattersFigure(metric: PairAnswer['about']['metric'], telling: Telling): MailFigure {
  return {
    value: mattersWords(printingFor(metric, telling)),
    label: `the smallest difference in ${metrics[metric].name} that matters here`,
  };
}
