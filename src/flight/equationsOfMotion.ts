import type { FlightModel } from './flightModel.ts';
import type { Launch } from './launch.ts';
import type { Vector } from './vector.ts';

/** Position (m), velocity over the ground (m/s) and spin (rad/s) in one row: x y z, vx vy vz, w. */
export type State = Float64Array<ArrayBuffer>;

export const stateSize = 7;

const perRpm = (2 * Math.PI) / 60;
const perDegree = Math.PI / 180;

export function spinInRpm(radiansPerSecond: number): number {
  return radiansPerSecond / perRpm;
}

/** State of the ball as it leaves the club at the origin. */
export function launchState({ ballSpeed, launchAngle, launchDirection, spinRate }: Launch): State {
  const up = launchAngle * perDegree;
  const right = launchDirection * perDegree;
  const level = ballSpeed * Math.cos(up);
  return Float64Array.of(
    0,
    0,
    0,
    level * Math.cos(right),
    ballSpeed * Math.sin(up),
    level * Math.sin(right),
    spinRate * perRpm,
  );
}

/**
 * Change of the state in time, written into `out`: gravity, drag along the path through the air, lift across both
 * path and spin axis, the axis fixed in space, spin lost at lambda V w / r (Smits & Smith 1994; Tavares and others
 * 1999).
 */
export function equationsOfMotion(launch: Launch, model: FlightModel): (state: State, out: State) => void {
  const { coefficients, dragScale, liftScale, ball, air, wind, gravity } = model;
  const { drag, lift, spinDecay } = coefficients;
  const radius = ball.diameter / 2;
  const area = Math.PI * radius * radius;
  const k = (air.density * area) / (2 * ball.mass);
  const reynoldsPerSpeed = (air.density * ball.diameter) / air.viscosity;
  const { x: ax, y: ay, z: az } = spinAxisOf(launch);
  const { x: windX, y: windY, z: windZ } = wind;

  return (state, out) => {
    const vx = state[3] ?? 0;
    const vy = state[4] ?? 0;
    const vz = state[5] ?? 0;
    const w = state[6] ?? 0;
    const ux = vx - windX;
    const uy = vy - windY;
    const uz = vz - windZ;
    const speed = Math.sqrt(ux * ux + uy * uy + uz * uz);
    // axis x path: as long as the part of the axis that lies across the path, times the speed
    const nx = ay * uz - az * uy;
    const ny = az * ux - ax * uz;
    const nz = ax * uy - ay * ux;
    const across = Math.sqrt(nx * nx + ny * ny + nz * nz);
    const spinParameter = speed > 0 ? (radius * w * across) / (speed * speed) : 0;
    const reynolds = reynoldsPerSpeed * speed;
    const slowing = k * dragScale * drag(spinParameter, reynolds) * speed;
    const lifting = across > 0 ? (k * liftScale * lift(spinParameter, reynolds) * speed * speed) / across : 0;
    out[0] = vx;
    out[1] = vy;
    out[2] = vz;
    out[3] = lifting * nx - slowing * ux;
    out[4] = lifting * ny - slowing * uy - gravity;
    out[5] = lifting * nz - slowing * uz;
    out[6] = (-spinDecay * speed * w) / radius;
  };
}

/** Unit vector square to the launch velocity: level and to the right, then turned about that velocity by the tilt. */
function spinAxisOf({ launchAngle, launchDirection, spinAxis }: Launch): Vector {
  const up = launchAngle * perDegree;
  const right = launchDirection * perDegree;
  const tilt = spinAxis * perDegree;
  const lean = Math.sin(tilt) * Math.sin(up);
  return {
    x: lean * Math.cos(right) - Math.cos(tilt) * Math.sin(right),
    y: -Math.sin(tilt) * Math.cos(up),
    z: lean * Math.sin(right) + Math.cos(tilt) * Math.cos(right),
  };
}
