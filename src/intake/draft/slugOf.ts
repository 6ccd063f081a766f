const longest = 40;
/** An address is read out, typed and printed; an id stands in it beside that of another. */
const longestProposed = 24;

const plainWords = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-/, '');

/** Small letters, digits and single hyphens out of any text, 40 characters at most; may be empty. */
export function slugOf(text: string): string {
  return plainWords(text).slice(0, longest).replace(/-$/, '');
}

/** The same as it is proposed: 24 characters at most, of whole words where the first is not longer by itself. */
export function shortSlug(text: string): string {
  const whole = plainWords(text).replace(/-$/, '');
  if (whole.length <= longestProposed) return whole;
  const cut = whole.slice(0, longestProposed + 1);
  return (cut.includes('-') ? cut.replace(/-[^-]*$/, '') : cut.slice(0, longestProposed)).replace(
    dangling,
    '',
  );
}

/** Words that lead to one that was cut off. */
const dangling = /(?:-(?:and|or|of|with|the|a|an|in|on|for|to|vs?|versus))+$/;

/** The first of `wanted`, `wanted-2`, `wanted-3`, ... that is free, shortened where it must be. */
export function freeSlug(wanted: string, isTaken: (slug: string) => boolean): string {
  for (let number = 1; ; number++) {
    const ending = number === 1 ? '' : `-${number}`;
    const slug = `${wanted.slice(0, longest - ending.length).replace(/-$/, '')}${ending}`;
    if (!isTaken(slug)) return slug;
  }
}
