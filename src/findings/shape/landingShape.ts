import { z } from 'zod';
import { count, id, interval, number } from './basics.ts';

const pairOfNumbers = (description: string) => z.tuple([z.number(), z.number()]).describe(description);

export const landingEllipse = z.strictObject({
  centre: pairOfNumbers('side and carry, m'),
  halfAxes: pairOfNumbers('longer and shorter half axis, m'),
  angle: number('of the longer half axis from the side axis, radians'),
});

export const contenderLanding = z.strictObject({
  id: id('contender'),
  n: count('counted shots with carry and side'),
  meanSide: number('average side, m').nullable(),
  meanCarry: number('average carry, m').nullable(),
  within: count('shots within the lane'),
  withinShare: interval('Wilson interval of the share within the lane').nullable(),
  left: count('shots left of the line'),
  right: count('shots right of the line'),
  nextShot: landingEllipse
    .nullable()
    .describe('nine in ten next shots land inside; from ten shots, one golfer'),
});

export const landing = z.strictObject({
  laneM: number('half the width of the lane round the target line, m'),
  byContender: z.array(contenderLanding).describe('a contender each'),
});

export const launchWindow = z.strictObject({
  ballSpeed: number('average ball speed, m/s'),
  sets: count('sets of coefficients it rests on'),
  launchAngles: z.array(z.number()).describe('degrees'),
  spinRates: z.array(z.number()).describe('rpm'),
  short: z
    .array(z.array(z.number()))
    .describe(
      'metres short of the best carry by the set that likes a point least; rows by spin, columns by launch',
    ),
});
