import { accentSheet } from './accentSheet.ts';
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
  const sheet = accentSheet(brand);
  const sheets: readonly BrandFile[] =
    sheet === null
      ? []
      : [
          {
            name: sheet.name,
            type: 'text/css; charset=utf-8',
            bytes: () => Promise.resolve(new TextEncoder().encode(sheet.css)),
          },
        ];
  return [...new Map([...logos, ...sheets].map((file) => [file.name, file])).values()];
}
