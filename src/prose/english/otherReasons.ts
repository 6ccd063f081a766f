import { metrics } from '../../trade/metrics.ts';
import type { Held, OtherReasons, Reason } from '../otherReasons.ts';
import { printDifference, printSize, type Printing } from '../printSteps.ts';
import { withUnit } from '../readerUnits.ts';
import type { Difference, PairAnswer } from '../statement.ts';
import { printingFor, type Telling } from '../telling.ts';
import { unjudgedPrinting } from '../unjudgedPrinting.ts';
import { variesBall } from '../variesBall.ts';
import { capitalised, counted, countWord, listed } from '../words.ts';
import { wayWords } from './checks.ts';
import { betweenWords, rangeOf } from './differences.ts';
import { causeOf } from './names.ts';
import { orderInWords } from './order.ts';
import { estimateWords } from './ranges.ts';
import { sayChance } from './reach.ts';
import { saySwingSummary } from './swing.ts';

/** One check: its numbers, or a sentence where it has none, and what is left of the answers. */
export interface ToldReason {
  readonly check: Reason['check'];
  readonly name: string;
  readonly numbers: { readonly difference: string; readonly range: string } | null;
  /** In place of numbers. */
  readonly words: string | null;
  readonly holds: string;
}

export interface ToldReasons {
  readonly caption: string;
  readonly rows: readonly ToldReason[];
}

/** The checks of one main measure, a line each. */
export function tellOtherReasons({ about, first, reasons }: OtherReasons, telling: Telling): ToldReasons {
  const several = telling.findings.contenders.length > 2;
  const pair = `${telling.the(first.ahead)} and ${telling.the(first.behind)}`;
  const name = capitalised(metrics[about.metric].name);
  return {
    caption: several ? `${name}: numbers of ${pair}, what holds of every pair` : `${name}: ${pair}`,
    rows: reasons.map((reason) => tellReason(reason, first, telling)),
  };
}

const names: Readonly<Record<Reason['check'], string>> = {
  'as-printed': 'As printed',
  'usual-strikes': capitalised(wayWords['usual-strikes']),
  'by-rounds': capitalised(wayWords['by-rounds']),
  'drift-taken-out': capitalised(wayWords['drift-taken-out']),
  'equal-speed': 'At equal club speed',
  'monitor-error': "With the monitor's error",
  'one-shot-out': 'Without any one shot',
  'left-out-counted': 'With the shots left out',
  order: 'Order of the shots',
  swing: 'The swing',
  chance: 'Chance alone',
};

function tellReason(reason: Reason, first: PairAnswer, telling: Telling): ToldReason {
  const judged = printingFor(first.about.metric, telling);
  const printing = unjudgedPrinting(judged);
  const own = { check: reason.check, name: names[reason.check], numbers: null, words: null };
  switch (reason.check) {
    case 'as-printed':
      return { ...own, numbers: numbersOf(reason.difference, first, judged, telling), holds: '' };
    case 'usual-strikes':
    case 'by-rounds':
    case 'drift-taken-out':
    case 'monitor-error':
      return {
        ...own,
        numbers: numbersOf(reason.difference, first, printing, telling),
        holds: heldWords(reason.held, telling),
      };
    case 'equal-speed':
      return {
        ...own,
        numbers: numbersOf(reason.difference, first, printing, telling),
        holds: equalSpeedWords(reason.held, telling),
      };
    case 'one-shot-out':
      return {
        ...own,
        words: `The difference stays ${betweenWords(reason.range, [first.ahead, first.behind], printing, telling)}.`,
        holds: heldWords(reason.held, telling),
      };
    case 'left-out-counted':
      return {
        ...own,
        ...(reason.difference === null
          ? { words: `${capitalised(counted(reason.shots, 'shot'))}, none of these two.` }
          : { numbers: numbersOf(reason.difference, first, printing, telling) }),
        holds: heldWords(reason.held, telling),
      };
    case 'order':
      return {
        ...own,
        words: `${capitalised(orderInWords(reason.order))}.${driftWords(reason.drift, printing)}`,
        holds: heldWords(reason.held, telling),
      };
    case 'swing':
      return {
        ...own,
        words: saySwingSummary(reason.summary, telling),
        holds: reason.summary.kind === 'swing-same' ? 'yes' : 'not known',
      };
    case 'chance':
      return { ...own, words: sayChance(reason.chance, telling), holds: 'likely ranges allow for it' };
  }
}

function numbersOf(
  difference: Difference,
  { ahead, behind }: PairAnswer,
  printing: Printing,
  telling: Telling,
): ToldReason['numbers'] {
  const { estimate } = difference;
  const size = estimateWords(difference, printing);
  return {
    difference:
      Number(printDifference(estimate, printing)) === 0
        ? 'almost nothing'
        : `${size} for ${telling.the(estimate < 0 ? behind : ahead)}`,
    range: rangeOf(difference, [ahead, behind], printing, telling),
  };
}

function driftWords(drift: number | null, printing: Printing): string {
  return drift === null
    ? ''
    : ` A steady drift of about ${withUnit(printSize(Math.abs(drift), printing), printing.unit)} from the first shot to the last would alone make the difference.`;
}

const holdsWords: Readonly<Record<NonNullable<Held['holds']>, string>> = {
  yes: 'yes',
  'not-sharply': 'not sharply',
  no: 'no',
};

/** More pairs than these are counted, not named. */
const mostNamed = 2;

/** "yes"; "yes, in all three pairs"; "yes for Heron and Wren; no for Heron and Plover"; "yes in four pairs; no in two pairs". */
function heldWords(held: readonly Held[], telling: Telling): string {
  const known = held.filter(({ holds }) => holds !== null);
  if (known.length === 0) return 'no difference to hold';
  const parts = (['yes', 'not-sharply', 'no'] as const).flatMap((holds) => {
    const own = known.filter((one) => one.holds === holds);
    return own.length === 0 ? [] : [{ word: holdsWords[holds], own }];
  });
  const [only] = parts;
  if (parts.length === 1 && only !== undefined) {
    return held.length === 1 ? only.word : `${only.word}, ${inPairs(known, telling)}`;
  }
  return parts
    .map(({ word, own }) =>
      own.length > mostNamed
        ? `${word} in ${counted(own.length, 'pair')}`
        : `${word} ${forPairs(own, telling)}`,
    )
    .join('; ');
}

/** Which pairs a word is about, where it is one word: "in all three pairs", or the one or two that have an answer to hold. */
function inPairs(known: readonly Held[], telling: Telling): string {
  const compared = telling.findings.contenders.length;
  if (known.length === (compared * (compared - 1)) / 2) return `in all ${countWord(known.length)} pairs`;
  return known.length > mostNamed ? `in ${counted(known.length, 'pair')}` : forPairs(known, telling);
}

/** "for Heron and Wren and for Heron and Plover". */
function forPairs(held: readonly Held[], { the }: Telling): string {
  return listed(held.map(({ answer: { ahead, behind } }) => `for ${the(ahead)} and ${the(behind)}`));
}

/** What a difference in club speed may be the doing of, where the answer is lost with it. */
function equalSpeedWords(held: readonly Held[], telling: Telling): string {
  const words = heldWords(held, telling);
  const lost = held.some(({ holds }) => holds === 'no');
  return lost && !variesBall(telling)
    ? `${words}, but club speed is partly the doing of ${causeOf(telling)}`
    : words;
}
