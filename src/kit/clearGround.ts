import type { Pixels } from './pixels.ts';

/** Where a picture stands on a larger one that is clear, px. */
export interface ClearGround {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly top: number;
}

/**
 * A picture on a clear ground: what shows it over a film lets the film through around it.
 *
 * @throws where the picture does not lie within the ground
 */
export function onClearGround(picture: Pixels, { width, height, left, top }: ClearGround): Pixels {
  const inside = left >= 0 && top >= 0 && left + picture.width <= width && top + picture.height <= height;
  if (!inside) throw new Error('The picture does not lie within its ground.');
  const rgba = new Uint8Array(width * height * 4);
  const row = picture.width * 4;
  for (let y = 0; y < picture.height; y += 1)
    rgba.set(picture.rgba.subarray(y * row, (y + 1) * row), ((top + y) * width + left) * 4);
  return { width, height, rgba };
}
