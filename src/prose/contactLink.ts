/** How a shop is reached, as a link where it can be one. */
interface ContactLink {
  readonly words: string;
  readonly href: string | null;
}

/** From what a shop wrote: an e-mail address, a telephone number, a page, or words. */
export function contactLink(written: string): ContactLink {
  const words = written.trim();
  if (/^[^\s@]+@[^\s@]+$/.test(words)) return { words, href: `mailto:${words}` };
  if (/^https?:\/\//i.test(words) && URL.canParse(words))
    return { words: spokenSite(words), href: new URL(words).href };
  if (/^\+?[\d\s()/.-]{6,25}$/.test(words))
    // A number is not broken at the end of a line.
    return {
      words: words.replaceAll(/[\s-]+/g, '\u00a0'),
      href: `tel:${words.replace(/\(0\)|[^\d+]/g, '')}`,
    };
  return { words, href: null };
}

/** A web address as one says it: without `https://`, `www.` and a stroke at its end. */
export function spokenSite(address: string): string {
  return address.replace(/^https?:\/\/(?:www\.)?/i, '').replace(/\/$/, '');
}
