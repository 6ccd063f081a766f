const longest = 40;

/** Small letters, digits and single hyphens out of any text, 40 characters at most; may be empty. */
export function slugOf(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-/, '')
    .slice(0, longest)
    .replace(/-$/, '');
}

/** The first of `wanted`, `wanted-2`, `wanted-3`, ... that is free, shortened where it must be. */
export function freeSlug(wanted: string, isTaken: (slug: string) => boolean): string {
  for (let number = 1; ; number++) {
    const ending = number === 1 ? '' : `-${number}`;
    const slug = `${wanted.slice(0, longest - ending.length).replace(/-$/, '')}${ending}`;
    if (!isTaken(slug)) return slug;
  }
}
