import sharp from 'sharp';
import type { PictureToShow } from '../intake/authored/picture.ts';
import type { ContentFolder } from './contentFiles.ts';

/**
 * A picture as the site has it: WebP of the stated size, turned as it was taken, without anything that a camera wrote
 * into it, such as the place.
 *
 * @throws Error where the file is damaged
 */
export async function publishedPicture(
  folder: ContentFolder,
  slug: string,
  { file, width, height }: PictureToShow,
): Promise<Uint8Array> {
  const path = `reports/${slug}/${file}`;
  try {
    return await sharp(folder.bytes(path).content ?? undefined)
      .autoOrient()
      .resize(width, height, { fit: 'fill' })
      .webp({ quality: 80 })
      .toBuffer();
  } catch {
    throw new Error(
      `${path} is damaged and cannot be shown. Save the picture anew, or take it out of the narrative.`,
    );
  }
}
