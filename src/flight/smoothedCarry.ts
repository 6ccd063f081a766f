import type { CarrySurface } from './carrySurface.ts';
import { designPoints } from './designPoints.ts';
import type { Launch } from './launch.ts';
import { inBox, outOfBox, shaping, type LaunchBox } from './launchBox.ts';
import { compiled, polynomialFit, powersUpTo } from './polynomial.ts';

/**
 * Mean carry, metres, of a cloud of shots around a mean launch, given in a row: ball speed, angle, spin, tilt, then
 * cosine and sine of the direction.
 */
export type MeanCarry = (mean: Float64Array) => number;

/** Numbers in such a row. */
export const meanLaunchSize = 6;

const points = designPoints(60, shaping.length);
const fit = polynomialFit(powersUpTo(shaping.length, 3), points);

/**
 * The carry of a hitter whose shots scatter as `residuals` do, as a function of the mean launch within `box`: the
 * mean over the cloud of the surface's carry, not the carry of the mean. Cubic in the box's coordinates, which for
 * means (a part of the range of single shots) loses nothing that could be printed.
 */
export function smoothedCarry(
  surface: Pick<CarrySurface, 'box' | 'along' | 'across'>,
  residuals: readonly Launch[],
  box: LaunchBox,
): MeanCarry {
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
  const mean = compiled([fit(clouds.map(({ ahead }) => ahead)), fit(clouds.map(({ aside }) => aside))]);
  const both = new Float64Array(2);
  return (launch) => {
    for (let i = 0; i < place.length; i++) {
      place[i] = ((launch[i] ?? 0) - (box.middle[i] ?? 0)) / (box.half[i] ?? 1);
    }
    mean(place, both);
    return (both[0] ?? 0) * (launch[4] ?? 1) - (both[1] ?? 0) * (launch[5] ?? 0);
  };
}
