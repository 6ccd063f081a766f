import type { CarrySurface } from './carrySurface.ts';
import { designPoints } from './designPoints.ts';
import type { Launch } from './launch.ts';
import { inBox, outOfBox, shaping, type LaunchBox } from './launchBox.ts';
import { compiled, polynomialFit, powersUpTo } from './polynomial.ts';

/** Metres along and across the launch direction, in the box's coordinates. */
export type Landing = Pick<CarrySurface, 'box' | 'along' | 'across'>;

const points = designPoints(60, shaping.length);
const fit = polynomialFit(powersUpTo(shaping.length, 3), points);

/**
 * Where the shots of a hitter land in the mean who scatters as `residuals` do, as a function of the mean launch within
 * `box`: the mean over the cloud of the surface's landings, not the landing of the mean. Cubic in the box's
 * coordinates, which for means (a part of the range of single shots) loses nothing that could be printed.
 */
export function smoothedSurface(surface: Landing, residuals: readonly Launch[], box: LaunchBox): Landing {
  const along = compiled(surface.along);
  const across = compiled(surface.across);
  const variables = shaping.length;
  const shifts = new Float64Array(residuals.length * variables);
  const cosines = new Float64Array(residuals.length);
  const sines = new Float64Array(residuals.length);
  residuals.forEach((residual, r) => {
    shaping.forEach((key, i) => (shifts[r * variables + i] = residual[key] / (surface.box.half[i] ?? 1)));
    const turn = (residual.launchDirection * Math.PI) / 180;
    cosines[r] = Math.cos(turn);
    sines[r] = Math.sin(turn);
  });
  const place = new Float64Array(variables);
  const clouds = points.map((point) => {
    const centre = Float64Array.from(inBox(surface.box, outOfBox(box, point)));
    let ahead = 0;
    let aside = 0;
    for (let r = 0; r < cosines.length; r++) {
      for (let i = 0; i < variables; i++) place[i] = (centre[i] ?? 0) + (shifts[r * variables + i] ?? 0);
      const x = along(place);
      const z = across(place);
      const cosine = cosines[r] ?? 1;
      const sine = sines[r] ?? 0;
      ahead += x * cosine - z * sine;
      aside += x * sine + z * cosine;
    }
    return { ahead: ahead / cosines.length, aside: aside / cosines.length };
  });
  return { box, along: fit(clouds.map(({ ahead }) => ahead)), across: fit(clouds.map(({ aside }) => aside)) };
}
