import { ruleBall } from './ball.ts';

/** A driver head at impact. */
interface Head {
  /** coefficient of restitution */
  readonly restitution: number;
  /** kg */
  readonly mass: number;
  /** loft at impact, degrees */
  readonly loft: number;
}

/**
 * Greatest ball speed over club speed for a strike on the centre: conservation of momentum with restitution along
 * the face's normal, a solid sphere that ends rolling along the face (Penner 2001, Am. J. Phys. 69; equations by
 * way of two transcriptions that agree).
 */
export function smashBound({ restitution, mass, loft }: Head): number {
  const radians = (loft * Math.PI) / 180;
  const ratio = ruleBall.mass / mass;
  const normal = (Math.cos(radians) * (1 + restitution)) / (1 + ratio);
  const tangential = Math.sin(radians) / (1 + ratio + 5 / 2);
  return Math.hypot(normal, tangential);
}
