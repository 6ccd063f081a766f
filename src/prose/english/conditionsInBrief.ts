import { itemsCompared } from '../../findings/buildDifferences.ts';
import type { Hitter } from '../../intake/authored/hitter.ts';
import type { Source } from '../../intake/authored/source.ts';
import type { Session } from '../../intake/session.ts';
import { leftOutReasons } from '../leftOutReasons.ts';
import type { Telling } from '../telling.ts';
import { variesBall } from '../variesBall.ts';
import { whoHit } from '../whoHit.ts';
import { capitalised, counted, sentence } from '../words.ts';
import { ballWords, monitorWords, placeWords, type ConditionWords } from './conditionWords.ts';
import { orderInWords, shotsEach } from './order.ts';
import { sayWhoHit } from './whoHit.ts';

/** One condition of a test, in words; null prints "not recorded". */
export interface ConditionInBrief {
  readonly label: string;
  readonly words: string | null;
}

/** The conditions that a reader needs: who hit, where, monitor, ball, order, what was left out, what was the same for all. */
export function conditionsInBrief(
  source: Source,
  session: Session,
  telling: Telling,
): readonly ConditionInBrief[] {
  const leftOut = leftOutReasons(session);
  const alike = sameForAll(source.front);
  return [
    { label: 'Who hit', words: whoWords(source, telling) },
    { label: 'Where', words: inBrief(placeWords(source.front)) },
    { label: 'Monitor', words: inBrief(monitorWords(source.front, session)) },
    ...(variesBall(telling) ? [] : [{ label: 'Ball', words: inBrief(ballWords(source.front)) }]),
    { label: 'Order', words: orderWords(telling) },
    ...(leftOut.length === 0
      ? []
      : [
          {
            label: 'Left out',
            words: sentence(
              leftOut
                .map(({ shots, rule, reason }) => `${counted(shots, 'shot')}: ${rule}, ${reason}`)
                .join('; '),
            ),
          },
        ]),
    ...(alike === null ? [] : [{ label: 'The same for all', words: alike }]),
  ];
}

/** What is recorded and told in brief, as one sentence; null where nothing is. */
function inBrief(words: Readonly<Record<string, ConditionWords | null>>): string | null {
  const known = Object.values(words).flatMap((each) => each?.inBrief ?? []);
  return known.length === 0 ? null : sentence(known.join('; '));
}

function whoWords(source: Source, telling: Telling): string {
  const [who = ''] = sayWhoHit(whoHit(source, telling.findings), telling.system);
  const saw = sawWords(source.front.hitters, telling);
  return saw === null ? who : `${who} ${saw}`;
}

/** What the golfers could see, as far as it was one thing for all of them. */
function sawWords(hitters: readonly Hitter[], { noun }: Telling): string | null {
  const sawClub = ofAll(hitters.map((hitter) => hitter.sawClub));
  const sawNumbers = ofAll(hitters.map((hitter) => hitter.sawNumbers));
  const they = hitters.length === 1 ? 'The golfer' : 'They';
  const [club, numbers] = [`which ${noun} it was`, 'the numbers'];
  if (sawClub === null && sawNumbers === null) return null;
  if (sawClub === null || sawNumbers === null) {
    const [saw, what] = sawClub === null ? [sawNumbers, numbers] : [sawClub, club];
    return `${they} ${saw === true ? 'could' : 'could not'} see ${what}.`;
  }
  if (sawClub === sawNumbers) {
    return sawClub
      ? `${they} could see ${club} and ${numbers}.`
      : `${they} could see neither ${club} nor ${numbers}.`;
  }
  return sawClub
    ? `${they} could see ${club}, but not ${numbers}.`
    : `${they} could see ${numbers}, but not ${club}.`;
}

function ofAll(answers: readonly (boolean | undefined)[]): boolean | null {
  const [first] = answers;
  return first !== undefined && answers.every((answer) => answer === first) ? first : null;
}

function orderWords({ findings: { contenders, design }, noun }: Telling): string {
  const counts = contenders.map(({ shots, excluded }) => shots - excluded);
  return sentence(`${shotsEach(counts, noun)}, ${orderInWords(design.order)}`);
}

/** "Head: one forged 5-iron; stated loft: 24°."; null where nothing is known to be the same. */
function sameForAll(front: Source['front']): string | null {
  const alike = itemsCompared(front).flatMap(({ item, values, state }) =>
    state === 'alike' ? [`${item}: ${values[0]?.value ?? ''}`] : [],
  );
  return alike.length === 0 ? null : sentence(capitalised(alike.join('; ')));
}
