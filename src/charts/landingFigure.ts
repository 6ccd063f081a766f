import type { ContenderLanding, LandingFindings } from '../findings/findings.ts';
import type { Session } from '../intake/session.ts';
import { formatNumber } from '../prose/numbers.ts';
import { shortUnit, toReader, unitFor, unitWord, withUnit } from '../prose/readerUnits.ts';
import { straighterSentence } from '../prose/straighterSentence.ts';
import type { Telling } from '../prose/telling.ts';
import { capitalised, countWord, sentence } from '../prose/words.ts';
import { contenderName } from './contenderName.ts';
import { drawnShots, drawnWords } from './drawnShots.ts';
import type { Figure } from './figure.ts';
import { landingChart } from './landing.ts';
import type { LandingPanel } from './landingInput.ts';

const id = 'landing';
const question = 'Where they landed';

/** *Where they landed*: carry and side of every shot, a panel a contender. */
export function landingFigure(session: Session, telling: Telling): Figure {
  const { landing } = telling.findings;
  if (landing === null) {
    return { kind: 'absent', id, question, why: 'Not drawn: it takes a column for carry and one for side.' };
  }
  const panels = landing.byContender.map((own) => panel(own, session, telling));
  const word = unitWord(unitFor('carry', telling.system));
  const others = landing.byContender.length - 1;
  return landingChart({
    id,
    question,
    subject: `Carry and side of every shot with each ${telling.noun}`,
    finding: caption(landing, telling) + drawnWords(session),
    description: panels
      .map(({ contender, numbers, feet }) =>
        sentence(`${contender.label}: ${numbers}; ${feet.left}, ${feet.within}, ${feet.right}`),
      )
      .join(' '),
    table: table(landing, telling),
    panels,
    within: read(landing.laneM, telling),
    axis: `${capitalised(word)}: carry up the page, left and right of the target line across, one scale throughout`,
    curveWords: 'Curve: the next shot would land inside nine times in ten',
    others:
      others === 1
        ? `Grey: the other ${telling.noun}`
        : `Grey: the other ${countWord(others)} ${telling.nouns}`,
    leftOut: 'left out',
    recorded: session.shots.length,
  });
}

function read(value: number, telling: Telling): number {
  return toReader(value, 'carry', telling.system);
}

function printed(value: number, telling: Telling): string {
  return formatNumber(read(value, telling), 0);
}

function panel(own: ContenderLanding, session: Session, telling: Telling): LandingPanel {
  const { meanCarry, meanSide } = own;
  const shots = drawnShots(session).flatMap((shot) => {
    const { carry, side } = shot.values;
    return shot.contender === own.id && typeof carry === 'number' && typeof side === 'number'
      ? [{ carry: read(carry, telling), side: read(side, telling), leftOut: shot.excluded !== null }]
      : [];
  });
  const curve = own.nextShot;
  return {
    contender: contenderName(own.id, telling),
    shots,
    numbers:
      meanCarry === null || meanSide === null
        ? 'no shot with a place'
        : `average ${withUnit(printed(meanCarry, telling), unitFor('carry', telling.system))}, ${sideWords(meanSide, telling)}`,
    average:
      meanCarry === null || meanSide === null
        ? null
        : { carry: read(meanCarry, telling), side: read(meanSide, telling) },
    curve:
      curve === null
        ? null
        : {
            centre: [read(curve.centre[0], telling), read(curve.centre[1], telling)],
            halfAxes: [read(curve.halfAxes[0], telling), read(curve.halfAxes[1], telling)],
            angle: curve.angle,
          },
    feet: { left: `${own.left} left`, within: withinWords(own, telling), right: `${own.right} right` },
  };
}

function withinWords({ within, n }: ContenderLanding, telling: Telling): string {
  return `${within} of ${n} within ${printed(telling.findings.landing?.laneM ?? 0, telling)}`;
}

/** "4 right", "2 left", "on the line". */
function sideWords(side: number, telling: Telling): string {
  const distance = printed(Math.abs(side), telling);
  return distance === '0' ? 'on the line' : `${distance} ${side > 0 ? 'right' : 'left'}`;
}

function caption(landing: LandingFindings, telling: Telling): string {
  const lane = withUnit(printed(landing.laneM, telling), unitFor('carry', telling.system));
  const counts = landing.byContender.map(
    ({ id: one, within, n }) => `${within} of ${n} with ${telling.nameOf(one)}`,
  );
  return `Within ${lane} of the line: ${counts.join(', ')}. ${straighterSentence(telling)} Seen from above, the golfer below the picture; one mark is one shot, the ring is the average.`;
}

function table(
  landing: LandingFindings,
  telling: Telling,
): { caption: string; head: string[]; rows: string[][] } {
  const unit = shortUnit(unitFor('carry', telling.system));
  const lane = printed(landing.laneM, telling);
  return {
    caption: `Where the shots landed (${unit})`,
    head: [
      capitalised(telling.noun),
      'Shots',
      'Average carry',
      'Average side, right is plus',
      'Left',
      'Right',
      `Within ${lane} ${unit} of the line`,
      'Share that would fit, from',
      'to',
    ],
    rows: landing.byContender.map((own) => [
      telling.nameOf(own.id),
      String(own.n),
      own.meanCarry === null ? '–' : printed(own.meanCarry, telling),
      own.meanSide === null ? '–' : printed(own.meanSide, telling),
      String(own.left),
      String(own.right),
      String(own.within),
      own.withinShare === null ? '–' : `${Math.round(100 * own.withinShare[0])}%`,
      own.withinShare === null ? '–' : `${Math.round(100 * own.withinShare[1])}%`,
    ]),
  };
}
