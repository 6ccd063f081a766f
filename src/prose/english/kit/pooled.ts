import { fewestForNewGolfer } from '../../../findings/thresholds.ts';
import type { PooledGap } from '../../../findings/pooledGap.ts';
import type { Pooled } from '../../pooledAnswer.ts';
import type { Difference, PairAnswer } from '../../statement.ts';
import { printingFor, type Telling } from '../../telling.ts';
import { capitalised, counted, countWord } from '../../words.ts';
import { sayClause } from '../pairInWords.ts';
import { oneSidedRange, twoSidedRange } from '../ranges.ts';

/** The title of a page about two things: "Heron and Wren: one test so far". */
export function pairTitle(a: string, b: string, reports: number): string {
  return reports === 1 ? `${a} and ${b}: one test so far` : `${a} and ${b} in ${counted(reports, 'test')}`;
}

/** The title of a page about one thing. */
export function thingTitle(name: string, reports: number): string {
  return reports === 1 ? `${name}: one test so far` : `${name} in ${counted(reports, 'test')}`;
}

/** "All seven golfers combined, each counting alike: Alder carried farther than Birch: about 5 yards, likely 3 to 8." */
export function sayPooled(pooled: Pooled, answer: PairAnswer, telling: Telling): string {
  return `${whomOf(pooled)}: ${sayClause(answer, telling)}.`;
}

/** For whom what is combined holds, as the name of a row and at the head of a sentence. */
function whomOf(pooled: Pooled): string {
  if (pooled.kind === 'one-party') {
    const days = counted(pooled.days, 'day');
    const when = pooled.days === pooled.reports ? days : `${counted(pooled.reports, 'test')} on ${days}`;
    return `${pooled.golfers === 1 ? 'This golfer' : `The same ${countWord(pooled.golfers)} golfers`}, ${when}`;
  }
  const { parties, golfers, newGolfer } = pooled;
  if (parties < golfers)
    return `${capitalised(counted(golfers, 'golfer'))} in ${countWord(parties)} groups that share no golfer, each group counting alike`;
  return `${newGolfer === null ? 'These' : 'All'} ${countWord(golfers)} golfers combined, each counting alike`;
}

/** The same in a row of a chart. */
export function whomInRow(pooled: Pooled): string {
  if (pooled.kind === 'one-party') return whomOf(pooled);
  return `All ${countWord(pooled.parties)} ${pooled.parties < pooled.golfers ? 'groups' : 'golfers'}`;
}

/** For whom else it holds, `another` being what another golfer might see, towards the one ahead; null where nothing can be said. */
export function sayOthers(
  pooled: Pooled,
  another: Difference | null,
  answer: PairAnswer,
  telling: Telling,
): string {
  if (pooled.kind === 'one-party')
    return `What holds for ${pooled.golfers === 1 ? 'this golfer' : 'them'} need not hold for you.`;
  if (another === null)
    return pooled.parties < fewestForNewGolfer
      ? 'Other golfers cannot be judged from so few.'
      : 'Golfers who hit together count as one here, so nothing can be said of another golfer.';
  const printing = printingFor(answer.about.metric, telling);
  const range =
    another.ci[0] > 0
      ? `${oneSidedRange(another, printing, true)} for ${telling.the(answer.ahead)}`
      : twoSidedRange(another, [answer.ahead, answer.behind], printing, telling);
  return `Another golfer's own test could show ${range}.`;
}

/** The same without the report that came first; null where too few would be left. */
export function sayWithoutFirst(answer: PairAnswer | null, telling: Telling): string {
  return answer === null
    ? 'Without the first test there would be too few to combine.'
    : `Without the first test: ${sayClause(answer, telling)}.`;
}

/** Why reports cannot be combined; `uncounted` of them cannot count. Empty for one report, of which there is nothing to say. */
export function sayNotPooled(
  { why, parties }: Extract<PooledGap, { readonly kind: 'none' }>,
  reports: number,
  uncounted: number,
): string {
  if (why === 'no-spread')
    return 'The tests show one and the same difference, so nothing says how far it may be off.';
  if (reports === 1) return '';
  const open =
    uncounted === 0
      ? ''
      : ` ${capitalised(counted(uncounted, 'test'))} cannot count, for the reason beside it.`;
  return `Not combined: that takes tests by three different golfers or groups of golfers, and there ${parties === 1 ? 'is' : 'are'} ${countWord(parties)}.${open}`;
}

/** Whether a test is in what is combined, and why not. */
export function saysWhetherCounted(
  why: 'counts' | 'replaced' | 'repeats' | 'not-judged' | 'open',
  combined: boolean,
): string {
  switch (why) {
    case 'counts':
      return combined ? 'yes' : 'not yet';
    case 'replaced':
      return 'no, replaced by a newer report';
    case 'repeats':
      return 'no, the same shots as in a newer report';
    case 'not-judged':
      return 'no, not judged';
    case 'open':
      return 'no, its order leaves the cause open';
  }
}

/** The table of tests and their conditions. */
export const meetingsTableWords = {
  caption: (group: string): string => `The tests and their conditions: ${group}`,
  head: ['Test', 'Golfers and shots', 'Place', 'Monitor', 'Corrected to'],
  combined: 'Combined',
  notRecorded: 'not recorded',
} as const;
