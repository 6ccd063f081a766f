import type { LandingFindings } from '../../../../findings/findings.ts';
import { formatNumber } from '../../../numbers.ts';
import { toReader, unitFor, withUnit } from '../../../readerUnits.ts';
import { straighterOf } from '../../../straighter.ts';
import type { Telling } from '../../../telling.ts';
import { capitalised, counted, listed } from '../../../words.ts';
import { sayExplored } from '../../explored.ts';
import { nearerClause } from '../../straighter.ts';
import { anyOf, byGolfers, inTest, theseMany, type ChartFinding } from './chartFinding.ts';

/** Who finished nearer the target line, if anybody: seen, and never what a test set out to check. */
export function landingFound(landing: LandingFindings, telling: Telling): ChartFinding {
  const { notJudged, clear, explored } = straighterOf(telling.findings);
  const within = withinLane(landing, telling);
  if (clear.length === 0) {
    const ids = landing.byContender.map(({ id }) => id).filter((id) => isCompared(id, telling));
    const why =
      notJudged === 'aim-off-line'
        ? ', as the aim is not known'
        : notJudged === 'too-few-shots'
          ? ', too few shots'
          : '';
    const answer = (names: string): string =>
      notJudged === null
        ? `no clear difference in accuracy between ${names}`
        : `accuracy not judged of ${names}${why}`;
    const names = anyOf(ids, telling, 'and');
    return {
      forms: [
        byGolfers(telling, answer(theseMany(ids.length, telling))),
        ...(notJudged === null ? [byGolfers(telling, `no clear accuracy difference between ${names}`)] : []),
        byGolfers(telling, answer(names)),
        inTest(telling, answer(names)),
      ],
      further: [within],
    };
  }
  const named = clear.map(
    ({ nearer, farther }) => `${telling.the(nearer)} finished nearer the line than ${telling.the(farther)}`,
  );
  const [first = ''] = named;
  const more = clear.length === 1 ? '' : `, and ${counted(clear.length - 1, 'more pair')} differed`;
  return {
    forms: [
      byGolfers(telling, 'some finished nearer the line than others, seen but not tested for'),
      byGolfers(telling, `${first}${more}, seen but not tested for`),
      inTest(telling, `${first}${more}, seen but not tested for`),
      inTest(telling, `${listed(clear.map((one) => nearerClause(one, telling)))}, seen but not tested for`),
    ],
    further: [within, sayExplored(explored)],
  };
}

/** Whether any pair that it is in was judged for accuracy; where none was, all are named. */
function isCompared(id: string, { findings: { straighter } }: Telling): boolean {
  const judged = (straighter ?? []).filter(({ verdict }) => verdict !== 'not-judged');
  return judged.length === 0 || judged.some(({ a, b }) => a === id || b === id);
}

/** "Within 15 yards of the line: 12 of 20 shots with Long, 18 of 20 with Short." */
function withinLane({ laneM, byContender }: LandingFindings, telling: Telling): string {
  const lane = withUnit(
    formatNumber(toReader(laneM, 'carry', telling.system), 0),
    unitFor('carry', telling.system),
  );
  const counts = byContender.map(
    ({ id, within, n }, at) => `${within} of ${n}${at === 0 ? ' shots' : ''} with ${telling.the(id)}`,
  );
  return capitalised(`within ${lane} of the line: ${counts.join(', ')}.`);
}
