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
    meaning: 'The sum of all readings divided by how many there are; the mean.',
  },
  {
    id: 'ball-speed',
    term: 'Ball speed',
    meaning: 'How fast the ball leaves the face.',
  },
  {
    id: 'calculated',
    term: 'Calculated',
    meaning:
      'Not seen by the monitor but worked out from other readings. In a net nearly all of the flight is calculated; pages say "modelled" or "calculated".',
  },
  {
    id: 'too-close',
    term: 'Cannot tell',
    meaning:
      'Both no gap and one that matters would fit the shots. It does not mean that two clubs are the same.',
  },
  {
    id: 'carry',
    term: 'Carry',
    meaning: 'How far the ball flies before it first comes down to the height from which it was hit.',
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
  { id: 'hang-time', term: 'Hang time', meaning: 'How long the ball is in the air.' },
  {
    id: 'interval',
    inTables: ['would fit', 'that would fit'],
    term: 'Interval, "would fit these shots"',
    meaning:
      'All the sizes of a gap that fit the shots that were hit. Made so that, over many tests, 95 of 100 such intervals hold the true size.',
  },
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
    id: 'luck',
    term: 'Luck',
    meaning:
      'What makes two averages differ although nothing else does: no golfer hits the same shot twice. The fewer the shots, the larger it is.',
  },
  {
    id: 'primary',
    term: 'Main measure',
    meaning:
      'The one measure (two at most) that a test was made for, chosen before hitting. All else is "seen, not planned".',
  },
  { id: 'median', term: 'Median', meaning: 'The middle reading: as many are above it as below.' },
  {
    id: 'mph',
    term: 'mph',
    meaning: 'Miles an hour, a speed; 100 mph are about 161 km/h.',
    writtenOut: 'miles an hour',
  },
  {
    id: 'one-after-another',
    term: 'One after another',
    meaning:
      'All shots with one club, then all with the next. Then warming up, tiring and grass wear cannot be told from the clubs.',
  },
  {
    id: 'p',
    term: 'p',
    meaning:
      'How often luck alone would make a gap at least this large, from 0 to 1. It is not the chance that a sentence is true, and says nothing of size.',
  },
  {
    id: 'rpm',
    term: 'rpm',
    meaning: 'Turns (revolutions) a minute: how fast a ball spins.',
    writtenOut: 'turns a minute',
  },
  {
    id: 'side',
    term: 'Side',
    meaning: 'How far left (minus) or right (plus) of the target line the ball lands.',
  },
  { id: 'smash', term: 'Smash factor', meaning: 'Ball speed divided by club speed.' },
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
  { id: 'spin-rate', term: 'Spin rate', meaning: 'How fast the ball turns, in turns a minute (rpm).' },
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
    meaning: 'Carry and roll together; it rests on a guess about the ground.',
  },
  {
    id: 'rounds',
    term: 'Turns',
    meaning: 'Hitting each club once before any is hit again, best in an order drawn by lot each time.',
  },
];
