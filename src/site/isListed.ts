import { metaIn } from '../kit/metaIn.ts';

/** Whether a page may be found by searches: one that asks them to pass it over says so in its head. */
export function isListed(page: string): boolean {
  return metaIn(page, 'robots')?.includes('noindex') !== true;
}
