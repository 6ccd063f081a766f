import type { MetricId } from '../../trade/metrics.ts';

/** How one thing is said to differ from another in a metric. */
export interface Comparison {
  /** The verb of a finding, for one thing and for several: *carried*, *was swung* and *were swung*. */
  readonly verb: string;
  readonly verbs: string;
  /** The same after *may*: *carry*. */
  readonly base: string;
  readonly more: string;
  readonly less: string;
  readonly most: string;
  readonly least: string;
  /** More or less, which of the two not being known: *a higher or lower smash factor*. */
  readonly either: string;
  /** A finding with its size, after the verb: `{n}` is the size with its unit. */
  readonly sized: Readonly<Record<'more' | 'less', string>>;
  /** Of two that do not differ by what matters, after their names. */
  readonly alike: string;
  /** The word for an axis or the head of a column, after the unit: *yards farther*. */
  readonly axis: Readonly<Record<'more' | 'less', string>>;
}

interface Words {
  readonly more: string;
  readonly less: string;
  readonly most: string;
  readonly least: string;
}

function adverbs(verb: string, base: string, { more, less, most, least }: Words, verbs = verb): Comparison {
  return {
    verb,
    verbs,
    base,
    more,
    less,
    most,
    least,
    either: `${more} or ${less}`,
    sized: { more: `about {n} ${more}`, less: `about {n} ${less}` },
    alike: `${verbs} alike`,
    axis: { more, less },
  };
}

/** A metric that a thing has more or less of: *had a higher smash factor*, *had more back spin*. */
function had(thing: string, { more, less, most, least }: Words, article: '' | 'a '): Comparison {
  const of = (word: string): string => `${article}${word} ${thing}`;
  const size = (word: string): string =>
    article === '' ? `about {n} ${word} ${thing}` : `a ${thing} about {n} ${word}`;
  return {
    verb: 'had',
    verbs: 'had',
    base: 'have',
    more: of(more),
    less: of(less),
    most: `the ${most} ${thing}`,
    least: `the ${least} ${thing}`,
    either: of(`${more} or ${less}`),
    sized: { more: size(more), less: size(less) },
    alike: `had much the same ${thing}`,
    axis: { more, less },
  };
}

const far: Words = { more: 'farther', less: 'less far', most: 'farthest', least: 'least far' };
const fast: Words = { more: 'faster', less: 'slower', most: 'fastest', least: 'slowest' };
const high: Words = { more: 'higher', less: 'lower', most: 'highest', least: 'lowest' };
const much: Words = { more: 'more', less: 'less', most: 'the most', least: 'the least' };
const sideways: Words = {
  more: 'farther right',
  less: 'farther left',
  most: 'farthest right',
  least: 'farthest left',
};
const plain = { ...much, most: 'most', least: 'least' };

const comparisons: Readonly<Record<MetricId, Comparison>> = {
  club_speed: adverbs('was swung', 'be swung', fast, 'were swung'),
  ball_speed: had('ball speed', { ...high }, 'a '),
  smash: had('smash factor', high, 'a '),
  launch_angle: adverbs('launched', 'launch', high),
  launch_direction: adverbs('started', 'start', sideways),
  spin_rate: adverbs('spun', 'spin', much),
  spin_axis: adverbs('tilted', 'tilt', sideways),
  back_spin: had('back spin', plain, ''),
  side_spin: had('spin to the right', plain, ''),
  attack_angle: adverbs(
    'was hit',
    'be hit',
    { more: 'more upward', less: 'more downward', most: 'most upward', least: 'most downward' },
    'were hit',
  ),
  club_path: adverbs('was swung', 'be swung', sideways, 'were swung'),
  face_angle: adverbs('was aimed', 'be aimed', sideways, 'were aimed'),
  face_to_path: adverbs(
    'was turned',
    'be turned',
    {
      more: 'farther right of its path',
      less: 'farther left of its path',
      most: 'farthest right of its path',
      least: 'farthest left of its path',
    },
    'were turned',
  ),
  dynamic_loft: had('dynamic loft', plain, ''),
  spin_loft: had('spin loft', plain, ''),
  strike_across: adverbs(
    'was struck',
    'be struck',
    { more: 'nearer the toe', less: 'nearer the heel', most: 'nearest the toe', least: 'nearest the heel' },
    'were struck',
  ),
  strike_up: adverbs(
    'was struck',
    'be struck',
    {
      more: 'higher on the face',
      less: 'lower on the face',
      most: 'highest on the face',
      least: 'lowest on the face',
    },
    'were struck',
  ),
  carry: adverbs('carried', 'carry', far),
  total: adverbs('finished', 'finish', far),
  side: adverbs('landed', 'land', sideways),
  curve: adverbs('curved', 'curve', sideways),
  apex: adverbs('flew', 'fly', high),
  descent_angle: adverbs('came down', 'come down', {
    more: 'steeper',
    less: 'shallower',
    most: 'steepest',
    least: 'shallowest',
  }),
  hang_time: adverbs('stayed in the air', 'stay in the air', {
    more: 'longer',
    less: 'less long',
    most: 'longest',
    least: 'least long',
  }),
};

/** The comparing words of a metric. */
export function comparisonOf(metric: MetricId): Comparison {
  return comparisons[metric];
}
