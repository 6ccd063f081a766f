import { imageSize } from 'image-size';
import { largestPicture, pictureWidths, type PictureFile } from '../intake/authored/picture.ts';
import { sha256, type ContentFolder } from './contentFiles.ts';

/** What the site can show: a drawing as SVG may hold script, and a film loses all but its first picture. */
const shown = ['jpg', 'png', 'webp', 'avif'];

const looksLikePicture = /\.(?:jpe?g|png|webp|avif|gif|svg|heic|heif|tiff?|bmp)$/i;

/** Greatest width of a picture of the site, pixels. */
const greatestWidth = Math.max(...pictureWidths);

/**
 * The pictures beside `report.md`; only those that the narrative names are read.
 *
 * @param named names of files
 */
export function readPictures(
  folder: ContentFolder,
  slug: string,
  named: readonly string[],
): readonly PictureFile[] {
  return folder
    .files(`reports/${slug}`)
    .filter((file) => looksLikePicture.test(file) || named.includes(file.normalize()))
    .map((file) =>
      named.includes(file.normalize()) ? readPicture(folder, slug, file) : { kind: 'not-named', file },
    );
}

function readPicture(folder: ContentFolder, slug: string, file: string): PictureFile {
  const path = `reports/${slug}/${file}`;
  if ((folder.size(path) ?? 0) > largestPicture) return { kind: 'too-large', file };
  const bytes = folder.bytes(path).content;
  const size = bytes === null ? null : sizeOf(bytes);
  if (bytes === null || size === null) return { kind: 'unreadable', file };
  const width = Math.min(greatestWidth, size.width);
  return {
    kind: 'shown',
    file,
    name: sha256(bytes).slice(0, 12),
    width,
    height: Math.max(1, Math.round((size.height * width) / size.width)),
    behind: size.type === 'png' ? 'png' : 'jpg',
  };
}

/** Pixels as a reader sees them: a photograph may lie on its side and say so. Null for what is no picture to show. */
function sizeOf(
  bytes: Uint8Array,
): { readonly width: number; readonly height: number; readonly type: string } | null {
  try {
    const { width, height, type = '', orientation = 1 } = imageSize(bytes);
    if (!shown.includes(type) || width === 0 || height === 0) return null;
    return orientation >= 5 ? { width: height, height: width, type } : { width, height, type };
  } catch {
    return null;
  }
}
