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
  const along = compiled([surface.along]);
  const across = compiled([surface.across]);
  const out = new Float64Array(1);
  const landing = (point: Float64Array): readonly [number, number] => {
    along(point, out);
    const ahead = out[0] ?? 0;
    across(point, out);
    return [ahead, out[0] ?? 0];
  };
  const offsets = residuals.map((residual) => ({
    shift: shaping.map((key, i) => residual[key] / (surface.box.half[i] ?? 1)),
    cosine: Math.cos((residual.launchDirection * Math.PI) / 180),
    sine: Math.sin((residual.launchDirection * Math.PI) / 180),
  }));
  const place = new Float64Array(shaping.length);
  const clouds = points.map((point) => {
    const centre = inBox(surface.box, outOfBox(box, point));
    let ahead = 0;
    let aside = 0;
    for (const { shift, cosine, sine } of offsets) {
      for (let i = 0; i < place.length; i++) place[i] = (centre[i] ?? 0) + (shift[i] ?? 0);
      const [x, z] = landing(place);
      ahead += x * cosine - z * sine;
      aside += x * sine + z * cosine;
    }
    return { ahead: ahead / offsets.length, aside: aside / offsets.length };
  });
  return { box, along: fit(clouds.map(({ ahead }) => ahead)), across: fit(clouds.map(({ aside }) => aside)) };
}
