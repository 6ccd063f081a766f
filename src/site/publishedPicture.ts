import sharp, { type Sharp } from 'sharp';
import type { PictureEdition, PictureToShow } from '../intake/authored/picture.ts';
import type { ContentFolder } from './contentFiles.ts';

/**
 * An edition of a picture as the site has it: of the stated size, turned as it was taken, without anything that a camera
 * wrote into it, such as the place.
 *
 * @throws Error where the file is damaged
 */
export async function publishedPicture(
  folder: ContentFolder,
  slug: string,
  { file }: PictureToShow,
  { width, height, format }: PictureEdition,
): Promise<Uint8Array> {
  const path = `reports/${slug}/${file}`;
  try {
    const resized = sharp(folder.bytes(path).content ?? undefined)
      .autoOrient()
      .resize(width, height, { fit: 'fill' });
    return await encoders[format](resized).toBuffer();
  } catch {
    throw new Error(
      `${path} is damaged and cannot be shown. Save the picture anew, or take it out of the narrative.`,
    );
  }
}

const encoders: Readonly<Record<PictureEdition['format'], (picture: Sharp) => Sharp>> = {
  webp: (picture) => picture.webp({ quality: 80 }),
  jpg: (picture) => picture.flatten({ background: '#ffffff' }).jpeg({ quality: 80, mozjpeg: true }),
  png: (picture) => picture.png({ compressionLevel: 9 }),
};
