import { contentDir } from 'virtual:straightface/site';
import { composedNames } from './composedNames.ts';
import { openContentFolder } from './contentFiles.ts';
import type { PicturePath } from './kitPaths.ts';
import { publishedPicture } from './publishedPicture.ts';

const types = { webp: 'image/webp', jpg: 'image/jpeg', png: 'image/png' } as const;

/** One edition of a narrative's picture, as it goes out. */
export async function pictureResponse({ report, picture, edition }: PicturePath['props']): Promise<Response> {
  const folder = composedNames(openContentFolder(contentDir()));
  const bytes = await publishedPicture(folder, report.source.slug, picture, edition);
  return new Response(new Uint8Array(bytes), { headers: { 'content-type': types[edition.format] } });
}
