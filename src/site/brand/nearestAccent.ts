import { contrast, hexOf, linearOf } from './contrast.ts';
import { linearOfOklch, oklchOf, type Oklch } from './oklch.ts';

/** Steps of lightness that are tried, of 1. */
const step = 1 / 1024;

/**
 * The colour of the same hue, nearest in lightness, that stands out from the ground by `least`: darker on a light ground,
 * lighter on a dark one. Its chroma is kept as far as a screen can show it.
 *
 * @param colour `#rrggbb`, as is the ground
 */
export function nearestAccent(colour: string, ground: string, least: number): string {
  const { lightness, chroma, hue } = oklchOf(linearOf(colour));
  const onLight = oklchOf(linearOf(ground)).lightness > 0.5;
  for (let tried = lightness; tried >= 0 && tried <= 1; tried += onLight ? -step : step) {
    const hex = hexOf(linearOfOklch(shown({ lightness: tried, chroma, hue })));
    if (contrast(hex, ground) >= least) return hex;
  }
  return onLight ? '#000000' : '#ffffff';
}

/** With as much of its chroma as a screen can show. */
function shown(colour: Oklch): Oklch {
  if (isShown(colour)) return colour;
  let [low, high] = [0, colour.chroma];
  for (let halved = 0; halved < 20; halved += 1) {
    const chroma = (low + high) / 2;
    if (isShown({ ...colour, chroma })) low = chroma;
    else high = chroma;
  }
  return { ...colour, chroma: low };
}

function isShown(colour: Oklch): boolean {
  return linearOfOklch(colour).every((light) => light >= -1e-6 && light <= 1 + 1e-6);
}
