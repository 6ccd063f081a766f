import { contentDir } from 'virtual:straightface/site';
import type { APIRoute, GetStaticPaths } from 'astro';
import { composedNames } from '../../../../site/composedNames.ts';
import { openContentFolder } from '../../../../site/contentFiles.ts';
import { picturePaths, type PicturePath } from '../../../../site/kitPaths.ts';
import { publishedPicture } from '../../../../site/publishedPicture.ts';

const types = { webp: 'image/webp', jpg: 'image/jpeg', png: 'image/png' } as const;

export const getStaticPaths = (() => picturePaths({ dev: import.meta.env.DEV })) satisfies GetStaticPaths;

export const GET: APIRoute<PicturePath['props']> = async ({ props: { report, picture, edition } }) => {
  const folder = composedNames(openContentFolder(contentDir));
  const bytes = await publishedPicture(folder, report.source.slug, picture, edition);
  return new Response(new Uint8Array(bytes), { headers: { 'content-type': types[edition.format] } });
};
