import { createHash } from 'node:crypto';
import { accentCss } from './accent.ts';
import type { Brand } from './brand.ts';

interface AccentSheet {
  readonly css: string;
  /** By which a content policy lets it in. */
  readonly hash: `sha256-${string}`;
}

/** The styles of a brand; null where there is no accent. */
export function accentSheet({ accent }: Brand): AccentSheet | null {
  const css = accent === null ? '' : accentCss(accent);
  if (css === '') return null;
  return { css, hash: `sha256-${createHash('sha256').update(css).digest('base64')}` };
}
