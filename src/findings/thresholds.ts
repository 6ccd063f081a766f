import { toCanonical } from '../trade/units.ts';

/**
 * Every threshold by which a report is judged. They are our own rules, found by simulation or set by judgement, unless
 * a source is named; none is bent to make a session come out.
 */

/** Level of what is judged on its own; several primary metrics share what is left of it. */
export const confidence = 0.95;
/** A check that holds at this level only is narrow; a gap in mini-blocks must survive visits at it. */
export const narrowConfidence = 0.9;
/** A spread is told apart, or a claim about one borne out, under this p. */
export const surelyP = 0.05;

/** Fewer shots than this with a contender and its gaps are not judged. */
export const fewestShotsJudged = 5;
/** With fewer shots than this with either contender a clear gap is a first look. */
export const firstLookShots = 8;
/** With fewer shots than this with either contender that has to be said. */
export const fewShots = 10;
/** Fewer shots than this with a contender and its spread is not judged. */
export const fewestForSpread = 12;
/** Fewer shots than this and no interval of a spread is given: they cannot say. */
export const fewestForSdInterval = 8;
/** Counts of shots needed from here on stand for "this many or more": nobody hits more with each. */
export const mostShots = 1000;
/** Tests less likely than this to find what matters usually find it too big. */
export const littlePower = 0.5;

/** From this lever on, a straight drift moves too much of itself into a gap. */
export const leverTooLong = 0.25;
/** Under this lever, with either order among them, golfers' orders even out. */
export const leverEven = 0.1;
/** Fewer visits than this of any contender in mini-blocks and the cause of a gap stays open. */
export const fewestVisits = 3;

/** From this many golfers on the golfer is the unit, and a pair needs as many who hit both. */
export const fewestHittersAsUnit = 6;
/** Averages on fewer shots than this are left out where the usual one has twice as many. */
export const fewestInCell = 3;
export const usualCell = 6;

/** The check without extreme strikes takes so many shots of either contender. */
export const fewestForUsualStrikes = 8;
/** The check by rounds takes so many complete rounds, or sets of visits, and degrees of freedom. */
export const fewestRoundsForCheck = 6;
export const fewestVisitsForCheck = 4;
export const fewestErrorDf = 3;
/** From so many shots of either contender one shot may decide. */
export const fewestForOneShot = 8;
/** Modified z score beyond which a shot is far out (Iglewicz & Hoaglin 1993). */
export const farOut = 3.5;

/** Readings missing by more than this between two contenders are missing unevenly. */
export const unevenBeyond = { shots: 1, share: 0.1 } as const;

/** What matters is unusual beyond this many times the trade's value, or under one part in as many. */
export const unusualMatters = 3;

/** The difference of two rectangular errors of +-a, twice over: 2 sqrt(2/3) a, in round figures (JCGM 100:2008, 4.3.7). */
export const accuracyFactor = 1.6;

/** Half the width of the lane round the target line in which shots are counted, m. */
export const laneM = toCanonical(15, 'yd');
/** Shots farther off the line than this on average were not aimed at it, m. */
export const farOffLineM = toCanonical(15, 'yd');
/** A curve for the next shot takes so many shots. */
export const fewestForCurve = 10;
/** Beyond this correlation carry and side say the same, and an ellipse would be a line. */
export const mostCorrelation = 0.98;
/** Launches read from which a launch window is drawn. */
export const fewestForLaunchWindow = 5;

/** Carries that scatter round the flight model beyond this scatter more than its own error, m. */
export const mostScatterM = toCanonical(4, 'yd');
/** Carries beside their launches from which the two are compared. */
export const fewestForCarryCheck = 8;

/** Reports by different golfers from which gaps are put together. */
export const fewestReportsPooled = 3;
/** Under so many golfers nothing is said of another. */
export const fewestForNewGolfer = 6;

/** Both limits within this much of what matters: the two are as good as within it of each other. */
export const nearlyMatters = 1.15;
