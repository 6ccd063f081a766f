import { answerWords } from './english/answerWords.ts';
/** A word of the trade or of statistics in plain language. */
export interface GlossaryEntry {
  /** Address on the glossary page. */
  readonly id: string;
  readonly term: string;
  readonly meaning: string;
  /** Further words for it that stand in heads and captions of tables. */
  readonly inTables?: readonly string[];
  /** What the abbreviation is short for: written out where a page uses it first. */
  readonly writtenOut?: string;
}

/** Words that our pages use, in alphabetical order. */
export const glossary: readonly GlossaryEntry[] = [
  {
    id: 'apex',
    term: 'Apex',
    meaning: 'The highest point of the flight, above the place where the ball was hit.',
  },
  {
    id: 'attack-angle',
    term: 'Attack angle',
    meaning: 'Whether the club moves up (plus) or down (minus) when it meets the ball, in degrees.',
  },
  {
    id: 'average',
    term: 'Average',
    meaning: 'The sum of all numbers divided by how many there are; the mean.',
  },
  {
    id: 'ball-speed',
    term: 'Ball speed',
    meaning: 'How fast the ball leaves the face.',
  },
  {
    id: 'best-estimate',
    term: 'Best estimate',
    meaning: 'The difference that we found between two averages. The true one is likely near it, not on it.',
  },
  {
    id: 'calculated',
    term: 'Calculated',
    meaning:
      'Not measured by the monitor, but made from other numbers by a formula. In a net, nearly all of the flight is calculated.',
  },
  {
    id: 'too-close',
    term: answerWords['cannot-tell'].title,
    meaning:
      'The likely range holds both no difference and one that matters. It does not mean that two clubs are the same.',
  },
  {
    id: 'carry',
    term: 'Carry',
    meaning: 'How far the ball flies before it first comes down to the height from which it was hit.',
  },
  {
    id: 'chance',
    inTables: ['luck', 'chance alone'],
    term: 'Chance',
    meaning:
      'What makes two averages differ when nothing else does: no golfer hits the same shot twice. The fewer the shots, the larger it is.',
  },
  {
    id: 'claim',
    term: 'Claim',
    meaning:
      'A sentence of the shop that we hold against the shots. They may support it, show that it is overstated, not show it, or contradict it.',
  },
  {
    id: 'club-path',
    term: 'Club path',
    meaning: 'The direction in which the club moves at impact; plus is to the right.',
  },
  {
    id: 'club-speed',
    term: 'Club speed',
    meaning: 'How fast the club head moves just before it meets the ball.',
  },
  {
    id: 'curve',
    term: 'Curve',
    meaning: 'How far the ball bends away from the direction in which it started.',
  },
  {
    id: 'descent-angle',
    term: 'Descent angle',
    meaning: 'How steeply the ball comes down, in degrees. Steeper balls stop sooner.',
  },
  {
    id: 'difference',
    term: 'Difference',
    meaning: 'How far two averages lie apart. We always say in what, by how much, and how sure that is.',
  },
  {
    id: 'drift',
    term: 'Drift',
    meaning: 'A slow change from the first shot to the last, as a golfer warms up or tires.',
  },
  {
    id: 'dynamic-loft',
    term: 'Dynamic loft',
    meaning: 'The loft that the face really has when it meets the ball, which depends on the swing.',
  },
  {
    id: 'face-angle',
    term: 'Face angle',
    meaning: 'Where the face points at impact, left (minus) or right (plus) of the target line.',
  },
  {
    id: 'face-to-path',
    term: 'Face to path',
    meaning: 'The angle between face and path; it decides most of the curve.',
  },
  { id: 'golfer', term: 'Golfer', meaning: 'Whoever hit the shots of a test.' },
  {
    id: 'handicap-band',
    term: 'Handicap band',
    meaning: 'A range that holds the handicap of a golfer, such as 6 to 10. Low is better.',
  },
  { id: 'hang-time', term: 'Hang time', meaning: 'How long the ball is in the air.' },
  {
    id: 'kmh',
    term: 'km/h',
    meaning: 'Kilometres an hour, a speed; 100 km/h are about 62 mph.',
    writtenOut: 'kilometres an hour',
  },
  {
    id: 'launch-angle',
    term: 'Launch angle',
    meaning: 'How steeply the ball starts, in degrees above the ground.',
  },
  {
    id: 'launch-direction',
    term: 'Launch direction',
    meaning: 'Where the ball starts, left (minus) or right (plus) of the target line.',
  },
  {
    id: 'likely',
    inTables: ['likely range'],
    term: 'Likely',
    meaning:
      'Our one word for a range. Ranges made like ours hold all the true average differences in at least 19 of 20 such tests. They allow for luck in these shots and for nothing else.',
  },
  {
    id: 'primary',
    term: 'Main measure',
    meaning:
      'The one measure that a test was made for, or two at most, chosen before hitting. All else was seen, but is not what the test set out to check.',
  },
  {
    id: 'measured',
    term: 'Measured',
    meaning: 'Seen by the monitor itself. What is made from other numbers is calculated.',
  },
  { id: 'median', term: 'Median', meaning: 'The middle number: as many are above it as below.' },
  {
    id: 'mph',
    term: 'mph',
    meaning: 'Miles an hour, a speed; 100 mph are about 161 km/h.',
    writtenOut: 'miles an hour',
  },
  { id: 'not-recorded', term: 'Not recorded', meaning: 'Nobody wrote it down, so we do not know it.' },
  {
    id: 'one-after-another',
    term: 'One after another',
    meaning:
      'All shots with one club, then all with the next. Warming up, tiring and a worn mat then look like the club.',
  },
  {
    id: 'p',
    term: 'p',
    meaning:
      'How often luck alone would make a difference at least this large, from 0 to 1. It is not the chance that a sentence is true, and it says nothing about size.',
  },
  {
    id: 'round',
    inTables: ['rounds'],
    term: 'Round',
    meaning: 'Each club or ball hit once before any is hit again, best in an order drawn by lot each time.',
  },
  {
    id: 'rpm',
    term: 'rpm',
    meaning: 'Revolutions a minute: how fast a ball spins.',
    writtenOut: 'revolutions a minute',
  },
  {
    id: 'side',
    term: 'Side',
    meaning: 'How far left (minus) or right (plus) of the target line the ball lands.',
  },
  { id: 'smash', term: 'Smash factor', meaning: 'Ball speed divided by club speed.' },
  {
    id: 'spell',
    inTables: ['spells'],
    term: 'Spell',
    meaning: 'A few shots in a row with one club or ball, before the next is picked up.',
  },
  {
    id: 'spin-axis',
    term: 'Spin axis',
    meaning: 'How far the spin is tilted; plus curves the ball to the right.',
  },
  {
    id: 'spin-loft',
    term: 'Spin loft',
    meaning: 'The angle between the loft at impact and the direction in which the club moves up or down.',
  },
  { id: 'spin-rate', term: 'Spin rate', meaning: 'How fast the ball spins, in revolutions a minute (rpm).' },
  {
    id: 'sd',
    inTables: ['standard deviation', 'spread (sd)'],
    term: 'Spread (sd)',
    meaning:
      'The standard deviation: how far single shots usually lie from the average. About two in three lie within one sd of it.',
  },
  {
    id: 'total',
    inTables: ['total'],
    term: 'Total distance',
    meaning: 'Carry and roll together; the roll is a guess about the ground.',
  },
  {
    id: 'matters',
    inTables: ['smallest difference that matters'],
    term: 'What matters',
    meaning: 'The smallest difference worth caring about, set before hitting. Every report prints it.',
  },
];
