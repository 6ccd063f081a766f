import { contentDir } from 'virtual:straightface/site';
import type { APIRoute, GetStaticPaths } from 'astro';
import { olderEdition } from '../../../../../kit/olderEdition.ts';
import { olderVersionWords, presentVersion } from '../../../../../prose/english/kit/versions.ts';
import { composedNames } from '../../../../../site/composedNames.ts';
import { openContentFolder } from '../../../../../site/contentFiles.ts';
import { hrefIn } from '../../../../../site/href.ts';
import { versionFile } from '../../../../../site/keptVersions.ts';
import { versionPaths, type VersionPath } from '../../../../../site/versionPaths.ts';

export const getStaticPaths = (() => versionPaths({ dev: import.meta.env.DEV })) satisfies GetStaticPaths;

export const GET: APIRoute<VersionPath['props']> = ({ props: { report, day } }) => {
  const { slug, locale } = report.source;
  const { content } = composedNames(openContentFolder(contentDir())).text(
    `reports/${slug}/${versionFile(day)}`,
  );
  const html = olderEdition(content ?? '', {
    words: olderVersionWords(day, locale),
    link: presentVersion,
    address: encodeURI(hrefIn(import.meta.env.BASE_URL)(`/reports/${slug}/`)),
  });
  return new Response(html, { headers: { 'content-type': 'text/html; charset=utf-8' } });
};
