import { sha256 } from '../contentFiles.ts';
import { accentCss } from './accent.ts';
import type { Brand } from './brand.ts';

/** The style sheet of a brand, and its path of the site; null where there is no accent. */
export function accentSheet({ accent }: Brand): { readonly name: string; readonly css: string } | null {
  const css = accent === null ? '' : accentCss(accent);
  if (css === '') return null;
  return { name: `${sha256(new TextEncoder().encode(css)).slice(0, 12)}.css`, css };
}
