import { logosOf, type Brand } from './brand.ts';
import { publishedLogo } from './publishedLogo.ts';

/** A file under `/brand/` of the site. */
export interface BrandFile {
  readonly name: string;
  readonly type: string;
  readonly bytes: () => Promise<Uint8Array>;
}

/** The files of a brand, each once. */
export function brandFiles(brand: Brand): readonly BrandFile[] {
  const logos = logosOf(brand).map((logo): BrandFile => ({
    name: logo.name,
    type: logo.content.kind === 'svg' ? 'image/svg+xml' : 'image/png',
    bytes: () => publishedLogo(logo),
  }));
  return [...new Map(logos.map((file) => [file.name, file])).values()];
}
