import type { PairAnswer } from '../../statement.ts';
import type { Telling } from '../../telling.ts';
import { sentence } from '../../words.ts';
import { sayNumbers } from '../answers.ts';

/** "Heron over Wren: about 12 yards, likely 8 to 15.": what is drawn of a pair, counted towards the one named first. */
export function sayDrawnPair(answer: PairAnswer, telling: Telling): string {
  return sentence(
    `${telling.the(answer.ahead)} over ${telling.the(answer.behind)}: ${sayNumbers(answer, telling)}`,
  );
}

/** What ring, bar and hatched band are. */
export function sayRingAndBar({ open, band }: { readonly open: boolean; readonly band: boolean }): string {
  return [
    'Ring: best estimate. Bar: likely range',
    ...(open ? [', open as the cause is'] : []),
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
