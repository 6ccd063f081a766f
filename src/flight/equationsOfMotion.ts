import type { Flow } from './coefficientSet.ts';
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

/** One step of a flight, see `equationsOfMotion`. */
interface Steps {
  /** Writes the change of a state in time. */
  readonly changeAt: (state: State, slope: State) => void;
  /** Writes the state a step after `now`, where the change is `slope`, and the change there. */
  readonly advance: (now: State, slope: State, next: State, nextSlope: State) => void;
}

/**
 * Gravity, drag along the path through the air, lift across both path and spin axis, the axis fixed in space, spin lost
 * at lambda V w / r (Smits & Smith 1994; Tavares and others 1999), by Runge-Kutta of fourth order. Nothing depends on
 * where the ball is, so that the slopes of the position are the velocities of the stages; all stages share one piece of
 * code and keep their numbers out of memory, as most of the time of an attribution is spent here.
 */
export function equationsOfMotion(launch: Launch, model: FlightModel): Steps {
  const { coefficients, dragScale, liftScale, ball, air, wind, gravity, step } = model;
  const { both, spinDecay } = coefficients;
  const radius = ball.diameter / 2;
  const area = Math.PI * radius * radius;
  const k = (air.density * area) / (2 * ball.mass);
  const reynoldsPerSpeed = (air.density * ball.diameter) / air.viscosity;
  const dragging = k * dragScale;
  const holding = k * liftScale;
  const { x: ax, y: ay, z: az } = spinAxisOf(launch);
  const { x: windX, y: windY, z: windZ } = wind;
  const half = step / 2;
  const sixth = step / 6;
  const flow: Flow = new Float64Array(4);

  const run = (first: Stage, now: State, slope: State, next: State, nextSlope: State): void => {
    const vx0 = now[3] ?? 0;
    const vy0 = now[4] ?? 0;
    const vz0 = now[5] ?? 0;
    const w0 = now[6] ?? 0;
    const cx0 = slope[3] ?? 0;
    const cy0 = slope[4] ?? 0;
    const cz0 = slope[5] ?? 0;
    const cw0 = slope[6] ?? 0;
    // Velocity over the ground and spin at this stage, and the sums of the second and third slopes.
    let ahead = first === secondSlope ? half : 0;
    let vx = vx0 + ahead * cx0;
    let vy = vy0 + ahead * cy0;
    let vz = vz0 + ahead * cz0;
    let w = w0 + ahead * cw0;
    let middleX = 0;
    let middleY = 0;
    let middleZ = 0;
    let middleVx = 0;
    let middleVy = 0;
    let middleVz = 0;
    let middleW = 0;
    for (let stage: number = first; ; stage++) {
      const ux = vx - windX;
      const uy = vy - windY;
      const uz = vz - windZ;
      const speed = Math.sqrt(ux * ux + uy * uy + uz * uz);
      // axis x path: as long as the part of the axis that lies across the path, times the speed
      const nx = ay * uz - az * uy;
      const ny = az * ux - ax * uz;
      const nz = ax * uy - ay * ux;
      const across = Math.sqrt(nx * nx + ny * ny + nz * nz);
      flow[0] = speed > 0 ? (radius * w * across) / (speed * speed) : 0;
      flow[1] = reynoldsPerSpeed * speed;
      both(flow);
      const slowing = dragging * (flow[2] ?? 0) * speed;
      const lifting = across > 0 ? (holding * (flow[3] ?? 0) * speed * speed) / across : 0;
      const cx = lifting * nx - slowing * ux;
      const cy = lifting * ny - slowing * uy - gravity;
      const cz = lifting * nz - slowing * uz;
      const cw = (-spinDecay * speed * w) / radius;
      if (stage === slopeAtNext) {
        nextSlope[0] = vx;
        nextSlope[1] = vy;
        nextSlope[2] = vz;
        nextSlope[3] = cx;
        nextSlope[4] = cy;
        nextSlope[5] = cz;
        nextSlope[6] = cw;
        return;
      }
      if (stage === fourthSlope) {
        next[0] = (now[0] ?? 0) + sixth * (vx0 + 2 * middleX + vx);
        next[1] = (now[1] ?? 0) + sixth * (vy0 + 2 * middleY + vy);
        next[2] = (now[2] ?? 0) + sixth * (vz0 + 2 * middleZ + vz);
        vx = vx0 + sixth * (cx0 + 2 * middleVx + cx);
        vy = vy0 + sixth * (cy0 + 2 * middleVy + cy);
        vz = vz0 + sixth * (cz0 + 2 * middleVz + cz);
        w = w0 + sixth * (cw0 + 2 * middleW + cw);
        next[3] = vx;
        next[4] = vy;
        next[5] = vz;
        next[6] = w;
        continue;
      }
      middleX += vx;
      middleY += vy;
      middleZ += vz;
      middleVx += cx;
      middleVy += cy;
      middleVz += cz;
      middleW += cw;
      ahead = stage === secondSlope ? half : step;
      vx = vx0 + ahead * cx;
      vy = vy0 + ahead * cy;
      vz = vz0 + ahead * cz;
      w = w0 + ahead * cw;
    }
  };
  return {
    changeAt: (state, slope) => run(slopeAtNext, state, slope, state, slope),
    advance: (now, slope, next, nextSlope) => run(secondSlope, now, slope, next, nextSlope),
  };
}

// The stages of a step; the first slope is known from the step before.
const secondSlope = 2;
const fourthSlope = 4;
const slopeAtNext = 5;
type Stage = typeof secondSlope | typeof slopeAtNext;

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
