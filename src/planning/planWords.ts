import type { Foresight } from '../intake/plan/foresight.ts';
import { mostSwings } from '../intake/plan/foresight.ts';
import type { LearnedSpread } from '../intake/plan/pastSpread.ts';
import { nounOf } from '../prose/noun.ts';
import { printStated } from '../prose/numbers.ts';
import { counted } from '../prose/words.ts';
import type { ClubKind } from '../trade/clubKind.ts';
import type { PlayerBand } from '../trade/typicalSpread.ts';
import { fromCanonical, type UnitId } from '../trade/units.ts';

/** Where a spread to plan with comes from. */
export type SpreadOrigin =
  | { readonly kind: 'own'; readonly learned: LearnedSpread }
  | { readonly kind: 'typed' }
  | { readonly kind: 'typical'; readonly band: PlayerBand };

export interface SpreadFacts {
  readonly metricName: string;
  readonly sd: number;
  readonly unit: UnitId;
  readonly origin: SpreadOrigin;
  readonly role: string | null;
  readonly club: ClubKind | null;
  /** What the shop's own sessions show, where another spread was typed. */
  readonly ownToo: number | null;
}

/** A canonical value in a unit, to two digits. */
export function amount(value: number, unit: UnitId): string {
  const number = printStated(Number(fromCanonical(value, unit).toPrecision(2)));
  return unit === '1' ? number : `${number} ${unit}`;
}

export function spreadLines(facts: SpreadFacts): readonly string[] {
  const { ownToo, unit } = facts;
  return [spreadLine(facts), ...(ownToo === null ? [] : [`Your own sessions show ${amount(ownToo, unit)}.`])];
}

function spreadLine({ metricName, sd, unit, origin, role, club }: SpreadFacts): string {
  const start = `Spread of ${metricName}, one golfer's shots with one club: standard deviation ${amount(sd, unit)}`;
  const withClub = club === null ? '' : ` with ${article(club)} ${club}`;
  switch (origin.kind) {
    case 'typed':
      return `${start}, as you typed it.`;
    case 'typical':
      return (
        `${start}, typical of a ${origin.band === 'good' ? 'good player' : 'middle handicap'}${withClub}. ` +
        'This is common practice, no source: your own sessions will take its place.'
      );
    case 'own': {
      const { shots, reports, sameRole } = origin.learned;
      const whose = role === null ? '' : sameRole ? ` of hitters who are ${role}` : ` (none by a ${role})`;
      return `${start}, from your own sessions${withClub}: ${counted(shots, 'shot')}${whose} in ${counted(reports.length, 'report')}.`;
    }
  }
}

const article = (noun: string): string => (/^[aeiou]/i.test(noun) ? 'an' : 'a');

const shotsOr = (count: number | null): string => (count === null ? 'more than 1000' : String(count));

/** How many shots the gap that matters takes. */
export function neededLine({ needed, neededRange }: Foresight, matters: string): string {
  const range =
    neededRange === null || neededRange[0] === neededRange[1]
      ? ''
      : ` (${shotsOr(neededRange[0])} to ${shotsOr(neededRange[1])}, as the spread itself is not known exactly)`;
  return `For a true gap of ${matters} to be found 4 times in 5: ${shotsOr(needed)} shots with each${range}.`;
}

/** Shots of one visit say less than as many hit apart, so mini-blocks take more. */
export function neededInVisits(needed: number | null, shotsAVisit: number): string {
  return `In mini-blocks of ${shotsAVisit} that takes ${shotsOr(needed)} shots with each: a gap must show from visit to visit too.`;
}

/** What the number of shots that was chosen is worth. */
export interface ChosenFacts {
  readonly foresight: Foresight;
  readonly contenders: number;
  readonly varied: string;
  readonly shotsEach: number;
  readonly unit: UnitId;
  readonly matters: string;
}

/** One line of what a number of shots can and cannot find. */
export interface ChosenRow {
  readonly label: string;
  readonly text: string;
}

export const chosenHeading = ({ shotsEach, contenders }: ChosenFacts): string =>
  `With ${shotsEach} shots each, ${shotsEach * contenders} in all:`;

/** What the chosen number of shots can and cannot find. */
export function chosenRows(facts: ChosenFacts): readonly ChosenRow[] {
  const { foresight, contenders, varied, shotsEach, unit, matters } = facts;
  const { many } = nounOf(varied);
  const { luck } = foresight;
  return [
    { label: 'can find', text: `a true gap of ${amount(foresight.detectable, unit)} or more, 4 times in 5` },
    {
      label: 'may miss',
      text: `a true gap of ${matters}: found in ${Math.round(foresight.power * 100)} of 100 such tests`,
    },
    {
      label: 'luck alone',
      text: `${contenders} equal ${many} come about ${amount(luck.average, unit)} apart from best to worst, up to ${amount(luck.upTo, unit)} now and then`,
    },
    {
      label: 'level',
      text: foresight.levelReachable
        ? `can be shown, if they are: the range around a gap is ${amount(foresight.halfWidth, unit)} either way`
        : `cannot be shown: the range around any gap is ${amount(foresight.halfWidth, unit)} either way, more than ${matters}; it takes ${shotsOr(foresight.neededForLevel)} shots each or more`,
    },
    ...(foresight.power < 0.5
      ? [{ label: 'beware', text: 'tests this short, when they find a gap, usually find it too big' }]
      : []),
    ...(shotsEach * contenders > mostSwings
      ? [
          {
            label: 'swings',
            text: `more than ${mostSwings} full swings tire most golfers (our judgement): rest, or hit on two days in whole rounds`,
          },
        ]
      : []),
  ];
}

/** Fewer contenders answer more: said from four on, with what two and three would take. */
export function fewerLine(
  contenders: number,
  needed: readonly [two: number | null, three: number | null],
): string | null {
  if (contenders <= 3) return null;
  return (
    `Two or three answer more than ${contenders}: every further one makes all gaps harder to find. ` +
    `Two would take ${shotsOr(needed[0])} shots each, three ${shotsOr(needed[1])}.`
  );
}

export const cautions: readonly string[] = [
  'Before hitting: warm up with a club outside the test and stop if anything hurts; keep others clear of the swing and the net;',
  'look over net, mat, grips and heads first; follow the rules of the place.',
];

/** Under which condition more shots than planned are no riddle. */
export const ifWarmUps = (swings: number): string =>
  `if the first ${swings === 1 ? 'one was a warm-up swing' : `${swings} were warm-up swings`}`;
