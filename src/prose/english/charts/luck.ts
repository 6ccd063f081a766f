import type { MetricFindings, PairFindings } from '../../../findings/findings.ts';
import { metrics } from '../../../trade/metrics.ts';
import { chanceOf } from '../../reach.ts';
import { shortUnit, unitWord, withUnit } from '../../readerUnits.ts';
import type { Printing } from '../../printSteps.ts';
import type { Telling } from '../../telling.ts';
import { capitalised, uncapitalised } from '../../words.ts';
import { sayShort } from '../answerWords.ts';
import { pairAnswer } from '../../pairAnswer.ts';
import { sayChance } from '../reach.ts';
import { comparedNames, inBrackets } from './ranges.ts';
import { rowAnswer } from './rowAnswer.ts';
import type { PairAnswer } from '../../statement.ts';
import { namesOf } from '../names.ts';

/** Sizes as printed, without unit. */
interface PrintedLuck {
  readonly average: string;
  readonly upTo: string;
  readonly seen: string;
}

/** The words of the chart of chance; `widest` is the pair farthest apart. Null where chance cannot be told. */
export function luckWords(
  metric: MetricFindings,
  widest: PairFindings,
  { average, upTo, seen, unit }: PrintedLuck & Pick<Printing, 'unit'>,
  telling: Telling,
) {
  const { name } = metrics[metric.id];
  const names = comparedNames(telling, [widest.a, widest.b]);
  const seenWords = `Seen here: ${withUnit(seen, unit)} between ${names}. ${rowAnswer(widest, metric, telling)}`;
  const chance = chanceOf(metric);
  if (chance === null) return null;
  const byChance = sayChance(chance, telling);
  return {
    subject: `Difference in average ${name} between ${names}, beside what chance alone makes`,
    found: [byChance, seenWords],
    signs: ['A rough yardstick, not a test.'],
    shows: byChance,
    description: `${byChance} ${seenWords}`,
    numbers: `${name} differences by chance`,
    table: {
      caption: `Largest difference between two average ${name} figures${inBrackets(shortUnit(unit))}`,
      head: ['What', 'Size'],
      rows: [
        ['By chance, typically', average],
        ['By chance, passed in one test of 20', upTo],
        [`Seen here, ${names}`, seen],
      ],
    },
    byChance: `By chance: typically about ${withUnit(average, unit)}, more than ${upTo} in one test of 20`,
    seen: [
      `${capitalised(names)}: ${withUnit(seen, unit)} apart`,
      sayShort(pairAnswer(widest, metric, telling.findings.design)),
    ],
    axis: capitalised(`${unitWord(unit)} between the highest and the lowest average ${name}`.trim()),
  };
}

/** "Heron and Wren came 12 yards apart in carry (clear difference); chance alone passes 4 in one test of 20". */
export function luckFinding(
  { seen, upTo }: { readonly seen: string; readonly upTo: string },
  answer: PairAnswer,
  { unit }: Printing,
  telling: Telling,
): string {
  const short = sayShort(answer);
  const apart = Number(seen) === 0 ? 'out level' : `${withUnit(seen, unit)} apart`;
  return capitalised(
    `${namesOf([answer.ahead, answer.behind], telling)} came ${apart} in ${metrics[answer.about.metric].name} (${uncapitalised(short)}); chance alone passes ${upTo} in one test of 20`,
  );
}

/** Why it is not drawn. */
export const noChance = 'What chance does can be said only for one golfer with five shots or more each.';
