import type { MetricId } from '../trade/metrics.ts';

/** How one contender is said to differ from another in a metric. */
export interface Comparative {
  /** Verb of a whole sentence: Alder *carried* farther than Birch. */
  readonly verb: 'carried' | 'went' | 'was' | 'started' | 'landed' | 'curved' | 'stayed';
  readonly more: string;
  readonly less: string;
}

const was = (more: string, less: string): Comparative => ({ verb: 'was', more, less });
const sideways = (verb: Comparative['verb']): Comparative => ({
  verb,
  more: 'more to the right',
  less: 'more to the left',
});

const comparatives: Readonly<Record<MetricId, Comparative>> = {
  club_speed: was('faster in the swing', 'slower in the swing'),
  ball_speed: was('faster off the face', 'slower off the face'),
  smash: was('higher in smash factor', 'lower in smash factor'),
  launch_angle: was('higher in launch', 'lower in launch'),
  launch_direction: sideways('started'),
  spin_rate: was('higher in spin', 'lower in spin'),
  spin_axis: was('tilted more to the right', 'tilted more to the left'),
  back_spin: was('higher in back spin', 'lower in back spin'),
  side_spin: was('higher in spin to the right', 'higher in spin to the left'),
  attack_angle: was('hit more upward', 'hit more downward'),
  club_path: was('swung more to the right', 'swung more to the left'),
  face_angle: was('aimed more to the right', 'aimed more to the left'),
  face_to_path: was('turned more to the right of its path', 'turned more to the left of its path'),
  dynamic_loft: was('higher in dynamic loft', 'lower in dynamic loft'),
  spin_loft: was('higher in spin loft', 'lower in spin loft'),
  strike_across: was('struck nearer the toe', 'struck nearer the heel'),
  strike_up: was('struck higher on the face', 'struck lower on the face'),
  carry: { verb: 'carried', more: 'farther', less: 'shorter' },
  total: { verb: 'went', more: 'farther', less: 'shorter' },
  side: sideways('landed'),
  curve: sideways('curved'),
  apex: was('higher at the top of its flight', 'lower at the top of its flight'),
  descent_angle: was('steeper in its landing', 'shallower in its landing'),
  hang_time: was('longer in the air', 'shorter in the air'),
};

/** The comparative words of a metric. */
export function comparativeOf(metric: MetricId): Comparative {
  return comparatives[metric];
}
