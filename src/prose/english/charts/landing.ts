import type { ContenderLanding, LandingFindings } from '../../../findings/findings.ts';
import { shortUnit, unitFor, unitWord, withUnit } from '../../readerUnits.ts';
import { straighterOf, type StraighterStatement } from '../../straighter.ts';
import type { Telling } from '../../telling.ts';
import { capitalised, counted, countWord } from '../../words.ts';
import { nearerClause, sayStraighter } from '../straighter.ts';
import { comparedNames } from './ranges.ts';
import { unplanned } from './unplanned.ts';

/** Places as printed, reader's unit, without sign. */
interface PrintedPlace {
  readonly carry: string;
  readonly side: string;
  /** Of the average: which side of the target line. */
  readonly towards: 'left' | 'right' | 'line';
}

/** The words of *Where they landed*; `lane` is half its width as printed. */
export function landingWords({ byContender }: LandingFindings, lane: string, telling: Telling) {
  const unit = unitFor('carry', telling.system);
  const counts = byContender.map(({ id, within, n }) => `${within} of ${n} with ${telling.nameOf(id)}`);
  const others = byContender.length - 1;
  return {
    subject: `Carry and side of every shot with ${comparedNames(telling)}`,
    found: [
      `Within ${withUnit(lane, unit)} of the line: ${counts.join(', ')}.`,
      sayStraighter(straighterOf(telling.findings), telling),
    ],
    signs: ['View from above, golfer at the bottom.'],
    numbers: 'carry and side',
    axis: `${capitalised(unitWord(unit))}. Up: carry. Across: left and right of the target line. Same scale in all panels.`,
    key: {
      shot: 'one shot',
      ring: 'average place',
      curve: 'nine in ten further shots should land inside',
      others: others === 1 ? `the other ${telling.noun}` : `the other ${countWord(others)} ${telling.nouns}`,
      bracket: `within ${withUnit(lane, unit)} of the line`,
    },
  };
}

/** Under the name of a panel: "average 202 yards, 1 right". */
export function placeWords(place: PrintedPlace | null, { system }: Telling): string {
  if (place === null) return 'no shot with a place';
  const unit = unitFor('carry', system);
  const side = place.towards === 'line' ? 'on the line' : `${place.side} ${place.towards}`;
  return `average ${withUnit(place.carry, unit)}, ${side}`;
}

/** In figures throughout: they stand in a row with those of other panels. */
const shots = (count: number, side: string): string => `${count} ${count === 1 ? 'shot' : 'shots'} ${side}`;

/** Counts at the foot of a panel. */
export function footWords({ left, right, within, n }: ContenderLanding, lane: string, { system }: Telling) {
  return {
    left: shots(left, 'left'),
    within: `${within} of ${n} within ${lane} ${shortUnit(unitFor('carry', system))}`,
    right: shots(right, 'right'),
  };
}

/** Caption and heads of the table; of several golfers no share is told, for their shots are not independent. */
export function landingTableWords(lane: string, { noun, system, findings }: Telling) {
  const unit = shortUnit(unitFor('carry', system));
  return {
    caption: `Where the shots landed (${unit})`,
    head: [
      capitalised(noun),
      'Shots',
      'Average carry',
      'Average side, right is plus',
      'Left',
      'Right',
      `Within ${lane} ${unit} of the line`,
      ...(findings.design.hitters === 1 ? ['Likely share, from', 'to'] : []),
    ],
  };
}

/** "Accuracy: no clear difference", or who finished nearer the line. */
export function straighterFinding({ notJudged, clear }: StraighterStatement, telling: Telling): string {
  switch (notJudged) {
    case 'no-side':
      return 'Accuracy was not measured';
    case 'too-few-shots':
    case 'aim-off-line':
      return 'Accuracy was not judged';
    case null: {
      const [first, ...rest] = clear;
      if (first === undefined) return 'Accuracy: no clear difference';
      const more = rest.length === 0 ? '' : `, and ${counted(rest.length, 'more pair')} differed`;
      return capitalised(`${nearerClause(first, telling)}${more}${unplanned}`);
    }
  }
}

/** Why it is not drawn. */
export const noPlaces = 'No shot has both a carry and a distance from the line.';
export const noPlaceColumns = 'This chart takes a column for carry and one for side.';
