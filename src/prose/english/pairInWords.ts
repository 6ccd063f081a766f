import { fewestHittersAsUnit, fewestShotsJudged } from '../../findings/thresholds.ts';
import { metrics } from '../../trade/metrics.ts';
import { printSize } from '../printSteps.ts';
import { withUnit } from '../readerUnits.ts';
import type { PairAnswer } from '../statement.ts';
import { printingFor, type Telling } from '../telling.ts';
import { capitalised, countWord } from '../words.ts';
import { comparisonOf } from './comparisons.ts';
import { namesOf } from './names.ts';
import { openClause, type Place } from './openCause.ts';
import {
  alikeNotConfirmed,
  pairSentences,
  tooFewShots,
  withinMatters,
  type NamedPair,
} from './pairSentences.ts';
import { estimateWords, mattersWords, numbersOf, oneSidedRange, twoSidedRange } from './ranges.ts';

/** Best estimate and likely range of a pair: "about 12 yards, likely 9 to 15"; empty where it was not judged. */
export function sayNumbers(answer: PairAnswer, telling: Telling): string {
  return numbersOf(answer, printingFor(answer.about.metric, telling), telling);
}

/** One pair in a sentence. */
export function sayPair(answer: PairAnswer, telling: Telling): string {
  return `${capitalised(sayClause(answer, telling))}.`;
}

/** One pair in a sentence, followed by its numbers where that sentence holds none. */
export function sayPairInFull(answer: PairAnswer, telling: Telling): string {
  const { status, because, withinMatters, spellsAlike } = answer;
  const told =
    status === 'clear' ||
    status === 'size-uncertain' ||
    status === 'level' ||
    (status === 'cannot-tell' && because === null && !withinMatters && !spellsAlike);
  const numbers = told ? '' : sayNumbers(answer, telling);
  return numbers === '' ? sayPair(answer, telling) : `${sayPair(answer, telling)} ${capitalised(numbers)}.`;
}

/**
 * One pair in a whole sentence of running text, without its full stop; names and measure stand in it. Under a heading
 * that names the measure, a `page`, what is known of the cause takes the shorter verb.
 */
export function sayClause(answer: PairAnswer, telling: Telling, place: Place = 'page'): string {
  const { status, difference, firstLook } = answer;
  const { metric } = answer.about;
  const printing = printingFor(metric, telling);
  const comparison = comparisonOf(metric);
  const { [answer.by]: more, sized } = comparison;
  const pair: NamedPair = {
    ...comparison,
    ahead: telling.the(answer.ahead),
    behind: telling.the(answer.behind),
    more,
  };
  if (difference === null) return notJudged(answer, telling);
  switch (status) {
    case 'clear':
      return pairSentences.clear(
        pair,
        {
          about: estimateWords(difference, printing),
          likely: oneSidedRange(difference, printing, false),
        },
        firstLook,
      );
    case 'size-uncertain':
      return pairSentences[status](pair, oneSidedRange(difference, printing, true));
    case 'small': {
      const size = withUnit(printSize(difference.estimate, printing), printing.unit);
      return pairSentences.small(pair, sized[answer.by].replace('{n}', size));
    }
    case 'level':
      return pairSentences.level(pair, mattersWords(printing));
    case 'cannot-tell':
      if (answer.because !== null) return openClause({ seen: false, answers: [answer] }, telling, place);
      if (answer.spellsAlike)
        return pairSentences[status](pair, ', once each spell of shots is counted as one');
      if (answer.withinMatters) return withinMatters(pair, mattersWords(printing), metrics[metric].name);
      return pairSentences[status](
        pair,
        `: ${twoSidedRange(difference, [answer.ahead, answer.behind], printing, telling)}`,
      );
    case 'cause-unclear':
      return openClause({ seen: true, answers: [answer] }, telling, place);
    case 'not-confirmed':
      return answer.alike
        ? alikeNotConfirmed(pair, unconfirmed(answer))
        : pairSentences[status](pair, unconfirmed(answer));
    case 'not-judged':
      return notJudged(answer, telling);
  }
}

function unconfirmed({ unconfirmed: checks }: PairAnswer): string {
  if (checks === null || checks.of === 1) return 'our one check does not confirm it';
  return checks.by === checks.of
    ? `none of our ${countWord(checks.of)} checks confirms it`
    : `${countWord(checks.by)} of our ${countWord(checks.of)} checks do not confirm it`;
}

function notJudged({ ahead, behind, about, notJudged: why }: PairAnswer, telling: Telling): string {
  const pair = `${telling.the(ahead)} against ${telling.the(behind)}`;
  const say = pairSentences['not-judged'];
  if (why === null) return say(pair, '');
  const own = namesOf(why.contenders, telling);
  const whom = why.contenders.length > 1 ? own : pair;
  const few = why.fewest;
  switch (why.because) {
    case 'no-reading':
      return say(own, `there is no reading of ${metrics[about.metric].name}`);
    case 'too-few-shots':
      return say(own, tooFewShots(few === null ? 'so few' : countWord(few), few === 1));
    case 'too-few-golfers':
      return say(pair, `fewer than ${countWord(fewestHittersAsUnit)} golfers hit both`);
    case 'golfers-not-comparable':
      return say(pair, "the golfers' averages cannot be compared");
    case 'golfer-too-few-shots':
      return say(pair, `a golfer hit fewer than ${countWord(fewestShotsJudged)} shots with one of them`);
    case 'aim-off-line':
      return say(pair, 'most shots finished to one side, and where the golfer aimed is not recorded');
    case 'all-alike':
      return say(whom, 'every reading is the same');
    case 'each-alike':
      return say(
        whom,
        `the monitor gave one number for every shot with each, so luck cannot be told from the ${telling.noun}`,
      );
  }
}
