import type { OpenCause } from '../../findings/findings.ts';
import { metrics } from '../../trade/metrics.ts';
import type { PairAnswer, StatementOf } from '../statement.ts';
import type { Telling } from '../telling.ts';
import { countWord, listed, placeInRow } from '../words.ts';
import { comparisonOf } from './comparisons.ts';
import { causeOf, namesOf } from './names.ts';
import { noneSeen, pairSentences } from './pairSentences.ts';

/** What the order of the shots leaves open, in the words of each place. */
interface CauseWords {
  /** In a sentence: "but results drifted during the test". */
  readonly because: string;
  /** In brackets where every word counts. */
  readonly inBrief: string;
  /** Where no difference was seen. */
  readonly couldHide: string;
}

const orderCouldHide = 'the order of the shots could hide one';

const words: Readonly<Record<OpenCause, CauseWords>> = {
  'one-after-another': {
    because: 'they were hit one after another',
    inBrief: 'hit one after another',
    couldHide: orderCouldHide,
  },
  'order-unknown': {
    because: 'the order of the shots is not known',
    inBrief: 'order unknown',
    couldHide: 'an order that is not known could hide one',
  },
  drift: {
    because: 'results drifted during the test',
    inBrief: 'results drifted',
    couldHide: 'a drift during the test could hide one',
  },
  'few-visits': {
    because: 'each was hit in only a few spells',
    inBrief: 'few spells',
    couldHide: 'so few spells could hide one',
  },
  lever: {
    because: 'one was mostly hit later',
    inBrief: 'one mostly hit later',
    couldHide: orderCouldHide,
  },
};

/** The words of a cause; of one that nothing is known of, those of shots hit one after another. */
export const causeWords = (because: OpenCause | null): CauseWords => words[because ?? 'one-after-another'];

/** Where an answer stands: on its page under its measure, or by itself. */
export type Place = 'page' | 'alone';

/** Differences whose cause the order leaves open, with the order in the same breath. */
export function openClause(
  { seen, answers }: Pick<StatementOf<'open'>, 'seen' | 'answers'>,
  telling: Telling,
  place: Place,
): string {
  const [first] = answers;
  const { metric } = first.about;
  if (!seen) {
    return noneSeen(
      metrics[metric].name,
      whereNoneWasSeen(answers, telling),
      causeWords(first.because).couldHide,
    );
  }
  const told = answers.filter(({ status }) => status === 'cause-unclear');
  const parts = seenParts(told, telling, place);
  const because = told.length === 1 ? openReason(told[0] ?? first, telling) : openReasonOfAll(told, telling);
  return pairSentences['cause-unclear'](parts.join(', and '), because, causeOf(telling));
}

/** "Bracken and Fennel went farther than Clover", or "Yarrow went farther than Nettle and Teasel": by whichever takes fewer words. */
function seenParts(answers: readonly PairAnswer[], telling: Telling, place: Place): readonly string[] {
  const byAhead = [...Map.groupBy(answers, ({ ahead }) => ahead).values()];
  const byBehind = [...Map.groupBy(answers, ({ behind }) => behind).values()];
  const groups = byBehind.length < byAhead.length ? byBehind : byAhead;
  const names = (ids: readonly string[]): string => namesOf([...new Set(ids)], telling);
  return groups.map((own, index) => {
    const [first] = own;
    if (first === undefined) return '';
    const { metric } = first.about;
    const { verb, verbs, [first.by]: more } = comparisonOf(metric);
    const ahead = new Set(own.map((one) => one.ahead));
    // Under a heading that names the measure, the shorter word; alone, the verb names it.
    const short = place === 'page' && metric === 'carry';
    const did = short ? 'went' : ahead.size > 1 ? verbs : verb;
    return `${names([...ahead])} ${index === 0 ? `${did} ` : ''}${more} than ${names(own.map(({ behind }) => behind))}`;
  });
}

/** "between Heron and Wren"; pairs that would fill lines are counted: "in seven of the ten pairs", "between any two of the five heads". */
function whereNoneWasSeen(answers: readonly PairAnswer[], telling: Telling): string {
  const compared = telling.findings.contenders.length;
  const pairs = (compared * (compared - 1)) / 2;
  if (answers.length <= 3) {
    const each = answers.map(
      ({ ahead, behind }) => `between ${telling.the(ahead)} and ${telling.the(behind)}`,
    );
    return listed(each, 'or');
  }
  return answers.length === pairs
    ? `between any two of the ${countWord(compared)} ${telling.nouns}`
    : `in ${countWord(answers.length)} of the ${countWord(pairs)} pairs`;
}

function openReason(answer: PairAnswer, telling: Telling): string {
  const { places, because, ahead, behind, hitLater } = answer;
  const [one, other] = [telling.the(ahead), telling.the(behind)];
  if (because === 'one-after-another' && places !== null) {
    return `${one} was hit ${placeInRow(places.ahead, places.of)} and ${other} ${placeInRow(places.behind, places.of)}`;
  }
  if (because === 'lever' && hitLater !== null) {
    return hitLater === ahead ? `was mostly hit later` : `${other} was mostly hit later`;
  }
  return causeWords(because).because;
}

function openReasonOfAll(answers: readonly PairAnswer[], telling: Telling): string {
  const [first] = answers;
  const same = answers.every(({ because }) => because === first?.because);
  if (first === undefined || !same) return `the order of the shots could explain it`;
  return first.because === 'lever'
    ? `some ${telling.nouns} were mostly hit later than others`
    : causeWords(first.because).because;
}
