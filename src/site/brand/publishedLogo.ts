import sharp from 'sharp';
import type { Logo } from './brand.ts';

/** How much finer than CSS pixels a picture is kept, for screens that show more. */
const finer = 3;

/** A logo as the site has it: a picture is made anew, small and without anything that a program wrote into it. */
export async function publishedLogo({ width, height, content }: Logo): Promise<Uint8Array> {
  if (content.kind === 'svg') return new TextEncoder().encode(content.svg);
  return sharp(content.bytes)
    .resize(width * finer, height * finer, { fit: 'inside', withoutEnlargement: true })
    .png({ compressionLevel: 9, effort: 10 })
    .toBuffer();
}
