import type { Hold, MetricFindings } from '../../findings/findings.ts';
import { metrics, type MetricId } from '../../trade/metrics.ts';
import { checksOf, type Check, type ChecksWorth, type OtherWay, type PairChecks } from '../checks.ts';
import { printStated } from '../numbers.ts';
import { toReader, withUnit } from '../readerUnits.ts';
import { printDifference, printSize, type Printing } from '../printSteps.ts';
import type { Difference, PairAnswer } from '../statement.ts';
import { printingFor, type Telling } from '../telling.ts';
import { unjudgedPrinting } from '../unjudgedPrinting.ts';
import { variesBall } from '../variesBall.ts';
import { capitalised, countWord, listed } from '../words.ts';
import { sayClause, sayNumbers } from './pairInWords.ts';
import { comparisonOf } from './comparisons.ts';
import { betweenWords, differenceBetween, rangeOf, type Sides } from './differences.ts';
import { causeOf } from './names.ts';
import { estimateWords } from './ranges.ts';
import { shotsLeftOut } from './shotsLeftOut.ts';

/** What was done in each other way. */
export const wayWords: Readonly<Record<Hold['check'], string>> = {
  'usual-strikes': 'without extreme shots',
  'by-rounds': 'round by round',
  'drift-taken-out': 'allowing for drift',
};

const holdsWords: Readonly<Record<NonNullable<OtherWay['holds']>, string>> = {
  yes: 'yes',
  no: 'no',
  'not-sharply': 'not sharply',
};

/** A table of numbers and words, as pages show it. */
export interface CheckTable {
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** "Carry: Heron and Wren". */
function checksTitle({ answer }: PairChecks, telling: Telling): string {
  return `${capitalised(metrics[answer.about.metric].name)}: ${pairNames(answer, telling)}`;
}

function pairNames({ ahead, behind }: PairAnswer, telling: Telling): string {
  return `${telling.the(ahead)} and ${telling.the(behind)}`;
}

/**
 * One row a check: the pair and what was done, its difference, its likely range, whether the printed answer is still
 * there; the printed answer itself before its checks. Null where there was no other way to work any of them out.
 */
export function checkTable(
  metric: MetricId,
  checks: readonly PairChecks[],
  telling: Telling,
): CheckTable | null {
  const rows = checks.flatMap((own) => checkRows(own, telling));
  return rows.length === 0
    ? null
    : {
        caption: `Differences in ${metrics[metric].name}, checked in other ways`,
        head: ['Pair and check', 'Difference', 'Likely range', 'Does the answer hold?'],
        rows,
      };
}

function checkRows({ answer, checks }: PairChecks, telling: Telling): readonly (readonly string[])[] {
  const ways = checks.flatMap((check) => (check.kind === 'other-ways' ? check.ways : []));
  const { difference, ahead, behind } = answer;
  if (ways.length === 0 || difference === null) return [];
  const row = (name: string, own: Difference, printing: Printing, holds: string): readonly string[] => [
    `${capitalised(pairNames(answer, telling))}, ${name}`,
    isNothing(own.estimate, printing)
      ? 'almost nothing'
      : `${estimateWords(own, printing)} for ${telling.the(own.estimate < 0 ? behind : ahead)}`,
    rangeOf(own, [ahead, behind], printing, telling),
    holds,
  ];
  // The printed answer reads as it does elsewhere; its checks were not held against what matters.
  const judged = printingFor(answer.about.metric, telling);
  return [
    row('as printed', difference, judged, ''),
    ...ways.map(({ check, difference: own, holds }) =>
      row(
        wayWords[check],
        own,
        unjudgedPrinting(judged),
        holds === null ? 'no answer to hold' : holdsWords[holds],
      ),
    ),
  ];
}

/** All that a pair was checked by, the sentences of each check together; the first of them names measure and pair. */
export function sayChecks({ answer, checks }: PairChecks, telling: Telling): readonly (readonly string[])[] {
  return checks.map((check) => sayCheck(check, answer, telling));
}

function sayCheck(check: Check, answer: PairAnswer, telling: Telling): readonly string[] {
  const { metric } = answer.about;
  const printing = unjudgedHere(answer, telling);
  const sides: Sides = [answer.ahead, answer.behind];
  const between = differenceBetween(metric, sides, telling);
  switch (check.kind) {
    case 'other-ways':
      return sayWays(check.ways, answer, telling);
    case 'one-shot-out': {
      const stays = `Whichever single shot is left out, ${between} stays ${betweenWords(check.range, sides, printing, telling)}.`;
      return check.decides ? [stays, 'One stray shot decides it: without it we could not tell.'] : [stays];
    }
    case 'left-out-counted':
      return sayLeftOut(check, answer, telling);
    case 'monitor-error': {
      const accuracy = withUnit(printStated(toReader(check.accuracy, metric, telling.system)), printing.unit);
      return [
        `If the monitor's error is not the same with each ${telling.noun}, ${between} ${isOrCouldBe(check.ci, sides, printing, telling)}.`,
        `The monitor is stated to be right to ${accuracy}.`,
      ];
    }
    case 'equal-speed':
      return sayEqualSpeed(check.difference, answer, telling);
    case 'drift-needed':
      return [
        `A steady drift of about ${withUnit(printSize(check.drift, printing), printing.unit)} from the first shot to the last would alone make ${between}.`,
      ];
  }
}

/** "We checked the carry answer for Heron and Wren three other ways (...).", "It held each time." */
function sayWays(ways: readonly OtherWay[], answer: PairAnswer, telling: Telling): readonly string[] {
  const { about, ahead, behind } = answer;
  const graded = ways.filter(({ holds }) => holds !== null);
  const [ungraded] = ways.filter(({ holds }) => holds === null);
  if (graded.length === 0) {
    const between = differenceBetween(about.metric, [ahead, behind], telling);
    return ungraded === undefined
      ? []
      : [
          `Counted ${wayWords[ungraded.check]}, ${between} ${isOrCouldBe(ungraded.difference.ci, [ahead, behind], unjudgedHere(answer, telling), telling)}.`,
        ];
  }
  const times = graded.length === 1 ? 'one other way' : `${countWord(graded.length)} other ways`;
  const names = graded.map(({ check }) => wayWords[check]).join(', ');
  const held = (['yes', 'no', 'not-sharply'] as const).flatMap((holds) => {
    const own = graded.filter((way) => way.holds === holds);
    if (own.length === 0) return [];
    if (own.length === graded.length && own.length > 1) return [allWords[holds]];
    const which = listed(
      own.map(({ check }) => wayWords[check]),
      holds === 'yes' ? 'and' : 'or',
    );
    return [`${heldWords[holds]}${own.length === graded.length ? '' : ` ${which}`}.`];
  });
  return [
    `We checked the ${metrics[about.metric].name} answer for ${pairNames(answer, telling)} ${times} (${names}).`,
    ...held,
  ];
}

const heldWords: Readonly<Record<NonNullable<OtherWay['holds']>, string>> = {
  yes: 'It held',
  no: 'It did not hold',
  'not-sharply': 'It did not hold sharply',
};

const allWords: typeof heldWords = {
  yes: 'It held each time.',
  no: 'It never held.',
  'not-sharply': 'It never held sharply.',
};

/** "is likely 6 to 18 yards", "could be anything from 19 yards for Heron to 1 for Wren". */
function isOrCouldBe(ci: Difference['ci'], sides: Sides, printing: Printing, telling: Telling): string {
  const is = ci[0] < 0 && ci[1] > 0 ? 'could be' : 'is likely';
  return `${is} ${rangeOf({ estimate: ci[0], ci }, sides, printing, telling)}`;
}

/** With and without the shots that were left out; once where both read alike. */
function sayLeftOut(
  { shots, whole, same }: Extract<Check, { readonly kind: 'left-out-counted' }>,
  answer: PairAnswer,
  telling: Telling,
): readonly string[] {
  const those = shotsLeftOut(shots, 'the shots left out with others');
  const [it, that] = shots === 1 ? ['it', 'that shot'] : ['them', 'those shots'];
  const counted = `With ${those} counted, ${sayClause(whole, telling)}.`;
  return same
    ? [counted, `Without ${it} the answer is the same: ${sayNumbers(answer, telling)}.`]
    : [
        counted,
        `Without ${it}, ${sayClause(answer, telling)}.`,
        `So the ${metrics[answer.about.metric].name} answer depends on ${that}.`,
      ];
}

/** "At equal club speed Short would carry about 2 yards farther than Long (anything from 8 yards for Short to 5 for Long)." */
function sayEqualSpeed(difference: Difference, answer: PairAnswer, telling: Telling): readonly string[] {
  const { about, ahead, behind, by } = answer;
  const printing = unjudgedHere(answer, telling);
  const turned = difference.estimate < 0;
  const [first, second] = turned ? [behind, ahead] : [ahead, behind];
  const own = turned
    ? { estimate: -difference.estimate, ci: [-difference.ci[1], -difference.ci[0]] as const }
    : difference;
  const { base, sized, [by]: more } = comparisonOf(about.metric);
  const range = rangeOf(own, [first, second], printing, telling);
  const would = isNothing(own.estimate, printing)
    ? `neither ${telling.the(first)} nor ${telling.the(second)} would ${base} ${more}`
    : `${telling.the(first)} would ${base} ${sized[by].replace('{n}', estimateWords(own, printing))} than ${telling.the(second)}`;
  // A ball waits where it lies and has no part in how fast the club comes.
  const ownDoing = variesBall(telling) ? [] : [`Club speed is partly the doing of ${causeOf(telling)}.`];
  return [`At equal club speed ${would} (${own.ci[0] > 0 ? 'likely ' : ''}${range}).`, ...ownDoing];
}

/** Only the printed answer is held against what matters. */
function unjudgedHere({ about }: PairAnswer, telling: Telling): Printing {
  return unjudgedPrinting(printingFor(about.metric, telling));
}

function isNothing(si: number, printing: Printing): boolean {
  return Number(printDifference(si, printing)) === 0;
}

/** What it is worth that an answer holds, once for all of them. */
export function sayChecksWorth({ byChance, real }: ChecksWorth): string {
  const passed =
    real === null
      ? `about ${byChance} of 100 differences made by chance pass them too`
      : `${byChance} of 100 differences made by chance pass them, and ${real} of 100 real ones`;
  return `These checks use the same shots and are not a second test: ${passed}.`;
}

/** What a pair was checked by besides the other ways of the table, for its place on a page. */
export interface ToldChecks {
  readonly pair: string;
  readonly lines: readonly string[];
}

/** Every checked pair of a metric, the surest first. */
export function toldChecks(metric: MetricFindings, telling: Telling): readonly ToldChecks[] {
  return checksOf(metric, telling.findings).map((checks) => tellChecks(checks, telling));
}

/** The title of a pair, and what it was checked by in sentences. */
export function tellChecks(checks: PairChecks, telling: Telling): ToldChecks {
  const lines = sayChecks(checks, telling).flatMap((own) => (own.length === 0 ? [] : [own.join(' ')]));
  return { pair: checksTitle(checks, telling), lines };
}
