import { ruleBall } from './ball.ts';

/** kg; a driver head. An iron's heavier head changes the formula by 2 %. Common practice, no source. */
const headMass = 0.2;

/**
 * Spin in rpm of a ball that leaves the face rolling: tangential speed V sin L / (1 + m/M + 5/2), spin 5/(2r) times it
 * (Penner 2001, Am. J. Phys. 69, for the speed; a uniform sphere for the rest).
 *
 * @param clubSpeed m/s
 * @param spinLoft degrees
 */
export function impactSpin(clubSpeed: number, spinLoft: number): number {
  const tangential =
    (clubSpeed * Math.sin((spinLoft * Math.PI) / 180)) / (1 + ruleBall.mass / headMass + 5 / 2);
  const radiansPerSecond = (5 * tangential) / (2 * (ruleBall.diameter / 2));
  return (radiansPerSecond * 60) / (2 * Math.PI);
}
