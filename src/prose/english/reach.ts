import { metrics } from '../../trade/metrics.ts';
import { formatNumber } from '../numbers.ts';
import { printSize, type Printing } from '../printSteps.ts';
import { withUnit } from '../readerUnits.ts';
import type { Chance, ReachStatement, ShotsNeeded } from '../reach.ts';
import { printingFor, type Telling } from '../telling.ts';
import { capitalised, countRange, countWord } from '../words.ts';
import { atLeastWords, mattersWords } from './ranges.ts';

/** "Three identical balls would typically come out about 2 yards apart in carry by chance, and more than 4 in one test of 20." */
export function sayChance({ metric, things, average, upTo }: Chance, telling: Telling): string {
  const printing = printingFor(metric, telling);
  return (
    `${capitalised(countWord(things))} identical ${wholeThings(telling)} would typically come out about ` +
    `${sizeWords(average, printing)} apart in ${metrics[metric].name} by chance, and more than ` +
    `${printSize(upTo, printing)} in one test of 20.`
  );
}

/** What was varied, several whole ones: "balls", "sets of grooves". */
export function wholeThings({ noun, nouns }: Pick<Telling, 'noun' | 'nouns'>): string {
  return noun.startsWith('set of ') ? noun.replace('set', 'sets') : nouns;
}

/** What the test could see, in a sentence. */
export function sayReach(statement: ReachStatement, telling: Telling): string {
  const printing = printingFor(statement.metric, telling);
  const { name } = metrics[statement.metric];
  switch (statement.kind) {
    case 'found': {
      const [fewest, most] = statement.shots;
      const shots = countRange(fewest, most);
      return `With ${shots} shots each, a real difference of ${atLeastWords(statement.least, printing)} in ${name} would be found four times in five.`;
    }
    case 'needed':
      return `To find a difference of ${mattersWords(printing)}, what matters here, it would take ${shotsWords(statement.shots)} shots with each ${telling.noun}.`;
    case 'too-short-for-level':
      return `The test was too short to rule out a difference in ${name} that matters; that takes ${shotsWords(statement.shots)} shots with each ${telling.noun}.`;
    case 'overstates':
      return `Tests this short tend to overstate the differences they find.`;
    case 'golfers-left-out':
      return statement.cells === 1
        ? `One golfer hit too few shots with one ${telling.noun} for them to count.`
        : `In ${countWord(statement.cells)} cases a golfer hit too few shots with one ${telling.noun} for them to count.`;
  }
}

/** A size with its unit: "2 yards". */
export function sizeWords(si: number, printing: Printing): string {
  return withUnit(printSize(si, printing), printing.unit);
}

function shotsWords({ few, most }: ShotsNeeded): string {
  const print = (shots: number): string => formatNumber(shots, 0);
  if (most === null) return `${print(few)} or more`;
  return few === most ? `about ${print(few)}` : `${print(few)} to ${print(most)}`;
}
