/** Families of clubs by which golfers look for a test; the order is that of a bag. */
export const clubFamilies = ['drivers', 'fairway woods', 'hybrids', 'irons', 'wedges', 'putters'] as const;

type ClubFamily = (typeof clubFamilies)[number];

const words: Readonly<Record<ClubFamily, RegExp>> = {
  drivers: /\bdrivers?\b/i,
  'fairway woods': /\bfairways?(?: woods?)?\b|\b[3-9][- ]?woods?\b/i,
  hybrids: /\b(?:\d[- ]?)?(?:hybrids?|rescues?)\b/i,
  irons: /\b(?:\d[- ]?)?irons?\b/i,
  wedges: /\bwedges?\b/i,
  putters: /\bputters?\b/i,
};

/** The families of clubs that texts name, in the order of a bag. */
export function clubFamiliesIn(texts: readonly string[]): readonly ClubFamily[] {
  const all = texts.join('\n');
  return clubFamilies.filter((family) => words[family].test(all));
}
