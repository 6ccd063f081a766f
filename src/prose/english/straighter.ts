import type { Nearer, StraighterStatement } from '../straighter.ts';
import { printingFor, type Telling } from '../telling.ts';
import { capitalised, listed } from '../words.ts';
import { sayExplored } from './explored.ts';
import { byRange } from './ranges.ts';

/** "No clear difference in accuracy.", or who finished nearer the line, and what that is worth. */
export function sayStraighter({ notJudged, clear, explored }: StraighterStatement, telling: Telling): string {
  switch (notJudged) {
    case 'no-side':
      return 'Accuracy was not measured.';
    case 'too-few-shots':
      return 'Accuracy was not judged: there were too few shots.';
    case 'aim-off-line':
      return 'Accuracy was not judged: most shots finished to one side, and where the golfer aimed is not recorded.';
    case null:
      return clear.length === 0
        ? 'No clear difference in accuracy.'
        : `${capitalised(listed(clear.map((one) => nearerClause(one, telling))))}. ${sayExplored(explored)}`;
  }
}

/** "Alder finished nearer the line than Birch, likely by 2 to 6 yards". */
export function nearerClause({ nearer, farther, difference }: Nearer, telling: Telling): string {
  const range = byRange(difference, printingFor('side', telling));
  return `${telling.the(nearer)} finished nearer the line than ${telling.the(farther)}, likely by ${range}`;
}
