import type { FlightModel } from './flightModel.ts';
import { naturalTurf, type Turf } from './turf.ts';

/** How a ball meets the ground: m/s, degrees below the level, rpm of backspin. */
interface Impact {
  readonly speed: number;
  readonly angle: number;
  readonly backspin: number;
}

/** Horizontal and upward speed in m/s, backspin in rad/s. */
interface Motion {
  readonly along: number;
  readonly up: number;
  readonly spin: number;
}

const perDegree = Math.PI / 180;
const perRpm = (2 * Math.PI) / 60;
const lowestHop = 0.005;
/** Deceleration over g on a slow green (Penner 2002). After the hops almost nothing is left to roll. */
const rollingFriction = 0.131;

/**
 * Metres from where a ball lands to where it rests, along its heading: an estimate. Hops of a solid sphere that
 * grips or slides on the turf (Daish 1981), then rolls. Firmness alone changes the run by half, and no session
 * tells it; below 0 a ball comes back.
 */
export function run(
  impact: Impact,
  { ball, gravity }: Pick<FlightModel, 'ball' | 'gravity'>,
  turf = naturalTurf,
): number {
  const radius = ball.diameter / 2;
  const angle = impact.angle * perDegree;
  let motion: Motion = {
    along: impact.speed * Math.cos(angle),
    up: -impact.speed * Math.sin(angle),
    spin: impact.backspin * perRpm,
  };
  let way = 0;
  for (;;) {
    motion = bounced(motion, turf, radius);
    if (motion.up <= 0 || motion.up ** 2 / (2 * gravity) < lowestHop) break;
    way += (2 * motion.up * motion.along) / gravity;
    motion = { ...motion, up: -motion.up };
  }
  const roll = motion.along ** 2 / (2 * (5 / 7) * rollingFriction * gravity);
  return way + Math.sign(motion.along) * roll;
}

/** The ground answers along its tilted plane: friction on the slipping surface, restitution across. */
function bounced({ along, up, spin }: Motion, turf: Turf, radius: number): Motion {
  // The plane leans towards the ball whichever way that comes.
  if (along < 0) {
    const mirrored = bounced({ along: -along, up, spin: -spin }, turf, radius);
    return { along: -mirrored.along, up: mirrored.up, spin: -mirrored.spin };
  }
  const { tilt, restitution, friction } = turf;
  const sine = Math.sin(tilt * perDegree);
  const cosine = Math.cos(tilt * perDegree);
  const tangent = along * cosine + up * sine;
  const normal = -along * sine + up * cosine;
  const across = (1 + restitution) * Math.abs(normal);
  const slip = tangent + radius * spin;
  const grip = (2 * slip) / 7;
  const rub = Math.sign(grip) * Math.min(Math.abs(grip), friction * across);
  const newTangent = tangent - rub;
  const newNormal = restitution * Math.abs(normal);
  return {
    along: newTangent * cosine - newNormal * sine,
    up: newTangent * sine + newNormal * cosine,
    spin: spin - (5 * rub) / (2 * radius),
  };
}
