import type { MetricId } from '../../trade/metrics.ts';
import type { DifferenceSeen } from '../differencesSeen.ts';
import type { Printing } from '../printSteps.ts';
import type { Telling } from '../telling.ts';
import { capitalised, counted } from '../words.ts';
import { answerWords, tooLittle } from './answerWords.ts';
import { comparisonOf } from './comparisons.ts';
import { namesOf } from './names.ts';
import { byRange } from './ranges.ts';

/** Whether somebody was seen ahead, however surely. */
export const isDifference = ({ as }: DifferenceSeen): boolean =>
  as === 'clear' ||
  as === 'size-uncertain' ||
  as === 'difference' ||
  as === 'small' ||
  as === 'cause-unclear';

/** What a main measure's differences were judged to be, pairs that cannot be told at the end. */
export function mainWords(
  seen: readonly DifferenceSeen[],
  printing: Printing,
  telling: Telling,
): readonly string[] {
  return [
    ...seen.flatMap((one) => mainClause(one, printing, telling) ?? []).map(capitalised),
    ...untold(seen, 'level', telling),
    ...untold(seen, 'cannot-tell', telling),
    ...untold(seen, 'not-judged', telling),
  ];
}

/** "Heron and Plover carried farther than Wren, likely by 4 to 15 yards"; null where there is no difference to tell. */
function mainClause(
  { as, by, ahead, behind, firstLook, range }: DifferenceSeen,
  printing: Printing,
  telling: Telling,
): string | null {
  const { verb, verbs, base, [by]: more } = comparisonOf(printing.metric);
  const [who, whom] = [namesOf(ahead, telling), namesOf(behind, telling)];
  const did = `${firstLook ? 'on a first look ' : ''}${who} ${ahead.length > 1 ? verbs : verb} ${more} than ${whom}`;
  switch (as) {
    case 'clear':
    case 'size-uncertain':
    case 'difference':
      return range === null
        ? did
        : `${did}, likely by ${byRange({ estimate: range[0], ci: range }, printing)}`;
    case 'small':
      return `${did}, by ${tooLittle}`;
    case 'cause-unclear':
      return `${did}, ${answerWords['cause-unclear'].after}`;
    case 'not-confirmed':
      return `${who} may ${base} ${more} than ${whom}; our checks do not confirm it`;
    case 'level':
    case 'cannot-tell':
    case 'not-judged':
      return null;
  }
}

type Untold = 'level' | 'cannot-tell' | 'not-judged';

/** Pairs without a difference to tell: by name where one of them is in all of these, else how many. */
function untold(seen: readonly DifferenceSeen[], as: Untold, telling: Telling): readonly string[] {
  const pairs = seen
    .filter((one) => one.as === as)
    .flatMap(({ ahead, behind }) => ahead.flatMap((one) => behind.map((other) => [one, other] as const)));
  const [first] = pairs;
  if (first === undefined) return [];
  const shared = first.find((id) => pairs.every((pair) => pair.includes(id)));
  const compared = telling.findings.contenders.length;
  const count = pairs.length === (compared * (compared - 1)) / 2 ? 'any pair' : counted(pairs.length, 'pair');
  if (shared === undefined) {
    return [
      as === 'level'
        ? `${answerWords.level.title} in ${count}`
        : as === 'cannot-tell'
          ? `We cannot tell in ${count}`
          : `We did not judge ${count}`,
    ];
  }
  const one = telling.the(shared);
  const others = pairs.map(([ahead, behind]) => (ahead === shared ? behind : ahead));
  switch (as) {
    case 'level':
      return [`${answerWords.level.title} between ${one} and ${namesOf(others, telling, 'or')}`];
    case 'cannot-tell':
      return [`We cannot tell ${one} from ${namesOf(others, telling, 'or')}`];
    case 'not-judged':
      return [`We did not judge ${one} against ${namesOf(others, telling, 'or')}`];
  }
}

/** What other measures show, in one form: "Seen, not tested for: Heron higher than Wren". */
export function seenWords(
  seen: readonly DifferenceSeen[],
  metric: MetricId,
  telling: Telling,
): readonly string[] {
  const { axis } = comparisonOf(metric);
  return asSeen(
    seen.filter(isDifference).map(({ as, by, ahead, behind }) => {
      const weak =
        as === 'small'
          ? `, by ${tooLittle}`
          : as === 'cause-unclear'
            ? `, ${answerWords['cause-unclear'].after}`
            : '';
      return `${namesOf(ahead, telling)} ${axis[by]} than ${namesOf(behind, telling)}${weak}`;
    }),
  );
}

export function asSeen(words: readonly string[]): readonly string[] {
  return words.length === 0 ? [] : [`Seen, not tested for: ${words.join('; ')}`];
}
