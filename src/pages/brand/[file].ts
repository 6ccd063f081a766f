import { siteContent } from 'virtual:straightface/site';
import type { APIRoute, GetStaticPaths } from 'astro';
import { brandFiles, type BrandFile } from '../../site/brand/brandFiles.ts';

interface Props {
  readonly file: BrandFile;
}

/** The shop's logos and the style sheet of its accent; none where it has none. */
export const getStaticPaths = (() =>
  brandFiles(siteContent({ fresh: import.meta.env.DEV }).brand).map((file) => ({
    params: { file: file.name },
    props: { file },
  }))) satisfies GetStaticPaths;

export const GET: APIRoute<Props> = async ({ props: { file } }) =>
  new Response(new Uint8Array(await file.bytes()), { headers: { 'content-type': file.type } });
