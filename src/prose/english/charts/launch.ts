import { shortUnit, unitFor } from '../../readerUnits.ts';
import type { Telling } from '../../telling.ts';
import { capitalised, counted, countWord } from '../../words.ts';
import { comparedNames } from './ranges.ts';

/** Average launch and spin of a contender as printed. */
export interface PrintedLaunch {
  readonly name: string;
  readonly launch: string;
  readonly spin: string;
}

export const launchQuestion = (speed: string): string => `Launch and spin at ${speed} ball speed`;

/** Why the outline is missing: the sets of coefficients agree on no launch and spin. */
export const noSharedBest = (sets: number, speed: string): string =>
  `The ${countWord(sets)} published sets of coefficients share no best launch and spin at ${speed}.`;

/** The words of *Launch and spin*: ball speed and depth of the outline as printed, with units. */
export function launchWords(
  {
    speed,
    depth,
    sets,
    runsOn,
    averages,
  }: {
    readonly speed: string;
    readonly depth: string;
    readonly sets: number;
    readonly runsOn: boolean;
    readonly averages: readonly PrintedLaunch[];
  },
  telling: Telling,
) {
  const all = `all ${countWord(sets)} sets of coefficients`;
  const names = comparedNames(telling);
  const told = averages.map(
    ({ name, launch, spin }) => `${capitalised(name)}: average launch ${launch} degrees, spin ${spin} rpm.`,
  );
  return {
    question: launchQuestion(speed),
    subject: `Launch angle and spin of every shot with ${names}, and where a flight model finds the most carry`,
    found: [
      'Ball speed, direction and where a shot has to stop are not in the picture.',
      'The model does not settle what spin is worth.',
    ],
    signs: [
      `Marks: shots as recorded. Outline: calculated for ${speed} ball speed; inside it the model's carry is within ${depth} of its maximum.`,
    ],
    shows: 'The outline is where a flight model finds the most carry at this ball speed.',
    description: `Shots as recorded, with modelled carry at ${speed} ball speed. ${told.join(' ')}`,
    numbers: 'average launch and spin',
    table: {
      caption: 'Average launch and spin',
      head: [
        capitalised(telling.noun),
        `Launch angle (${shortUnit(unitFor('launch_angle', telling.system))})`,
        `Spin rate (${shortUnit(unitFor('spin_rate', telling.system))})`,
      ],
      rows: averages.map(({ name, launch, spin }) => [name, launch, spin]),
    },
    setting: `At ${speed} ball speed, calculated, ${all}`,
    plateauWords: `Inside the outline: within ${depth} of the most this ball speed can carry${runsOn ? '; dotted: it runs on beyond what was calculated' : ''}`,
    launchAxis: 'Launch angle in degrees',
    spinAxis: 'Spin in rpm',
  };
}

/** "Five of 36 shots lie where the model carries farthest". */
export function launchFinding(inside: number, shots: number): string {
  if (inside === 0) return `None of ${counted(shots, 'shot')} lies where the model carries farthest`;
  return capitalised(
    `${countWord(inside)} of ${counted(shots, 'shot')} ${inside === 1 ? 'lies' : 'lie'} where the model carries farthest`,
  );
}

/** Why it is not drawn. */
export const noLaunches = 'No shot has both a launch angle and spin.';
export const noLaunchColumns =
  'This chart takes one golfer and columns for ball speed, launch angle and spin.';
export const notForDistance =
  'This chart is for drivers and fairway woods; other clubs must also stop the ball.';
export const outOfWindow = 'No shot lies where the model finds the most carry.';
