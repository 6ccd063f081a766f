import type { Shop } from '../intake/authored/shop.ts';

/** Turns a path of the site, which begins with a slash, into an address that works everywhere. */
export type Absolute = (path: string) => string;

/** Absolute addresses of the published site; null while the shop has not said where it will stand. */
export function absoluteAddress(shop: Shop | null): Absolute | null {
  if (shop === null || shop.address === null) return null;
  const { site, base } = shop.address;
  const root = `${site}${base.replace(/\/+$/, '')}`;
  return (path) => `${root}${encodeURI(path)}`;
}

/** An address as people write it: letters as they are, without the scheme and without the last slash. */
export function spokenAddress(address: string): string {
  return decodeURI(address)
    .replace(/^https?:\/\//, '')
    .replace(/\/$/, '');
}
