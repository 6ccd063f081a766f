import { siteContent } from 'virtual:straightface/site';
import { brandFiles, type BrandFile } from './brandFiles.ts';

/** One of the shop's own files with its address, which bears its ending, or `dev` would not serve it. */
export interface BrandPath {
  readonly params: { readonly name: string };
  readonly props: { readonly file: BrandFile };
}

/** The shop's logos; none where it has none. */
export function brandPaths({ dev, ending }: { readonly dev: boolean; readonly ending: string }): BrandPath[] {
  return brandFiles(siteContent({ fresh: dev }).brand)
    .filter(({ name }) => name.endsWith(ending))
    .map((file) => ({ params: { name: file.name.slice(0, -ending.length) }, props: { file } }));
}

/** A file of the brand as it goes out. */
export async function brandResponse({ file }: BrandPath['props']): Promise<Response> {
  return new Response(new Uint8Array(await file.bytes()), { headers: { 'content-type': file.type } });
}
