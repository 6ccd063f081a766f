import type { Caution, PairAnswer } from '../../statement.ts';
import type { Telling } from '../../telling.ts';
import { capitalised, countWord, sentence, uncapitalised } from '../../words.ts';
import { sayNumbers } from '../pairInWords.ts';
import { namesItsPair, sayCautionInBrief } from './cautionsInBrief.ts';

/** "Heron over Wren: about 12 yards, likely 8 to 15.": what is drawn of a pair, counted towards the one named first. */
export function sayDrawnPair(answer: PairAnswer, telling: Telling): string {
  return sentence(
    `${telling.the(answer.ahead)} over ${telling.the(answer.behind)}: ${sayNumbers(answer, telling)}`,
  );
}

/** So many pairs are named; more are counted. */
const mostPairsNamed = 2;

/**
 * A caution in brief with whom it is about, so that one of one pair is not taken for one of all: "For Long and
 * Short, the swing differed too: it may not be the length."
 *
 * @param judged how many pairs the answer has
 */
export function sayCautionOfPairs(caution: Caution, judged: number, telling: Telling): string {
  const { pairs } = caution;
  const brief = sayCautionInBrief(caution, telling);
  if (pairs.length >= judged || namesItsPair(caution)) return brief;
  const named = pairs.map(({ ahead, behind }) => `for ${telling.the(ahead)} and ${telling.the(behind)}`);
  const whom =
    named.length > mostPairsNamed
      ? `in ${countWord(named.length)} of the ${countWord(judged)} pairs`
      : named.join(' and ');
  return `${capitalised(whom)}, ${uncapitalised(brief)}`;
}

/** What ring, bar and hatched band are. */
export function sayRingAndBar({ open, band }: { readonly open: boolean; readonly band: boolean }): string {
  return [
    'Ring: best estimate. Bar: likely range',
    ...(open ? [', not filled as the cause is unclear'] : []),
    band ? '. Hatched: too small to matter.' : '.',
  ].join('');
}

/** "Hit 18 April 2026."; `day` is in words. */
export function sayDayHit(day: string): string {
  return `Hit ${day}.`;
}

/** "example.test/reports/three-balls, version 1.0.1"; without an address the version of the report alone. */
export function sayWhereAndVersion(address: string | null, version: string): string {
  return address === null ? `Version ${version} of the report.` : `${address}, version ${version}`;
}
