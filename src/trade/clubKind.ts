/** Kinds of club that differ in how far apart a golfer's shots come. */
export type ClubKind = 'driver' | 'iron' | 'wedge';

export const clubKinds = ['driver', 'iron', 'wedge'] as const satisfies readonly ClubKind[];

const words: Readonly<Record<ClubKind, RegExp>> = {
  driver: /\bdrivers?\b/i,
  iron: /\birons?\b/i,
  wedge: /\bwedges?\b/i,
};

/** The kind of club that texts speak of; null where they name none, or several. */
export function clubKindIn(texts: readonly string[]): ClubKind | null {
  const all = texts.join('\n');
  const named = clubKinds.filter((kind) => words[kind].test(all));
  const [only] = named;
  return named.length === 1 && only !== undefined ? only : null;
}

export function isClubKind(text: string): text is ClubKind {
  return clubKinds.some((kind) => kind === text);
}

const farClubs = /\b(drivers?|(?:fairway|mini|[3579])[ -]?woods?|woods?)\b/i;
/** Clubs that must stop the ball where it lands. */
const stoppingClubs = /\b(irons?|wedges?|hybrids?|rescues?|putters?)\b/i;

/** Whether texts speak of clubs that are hit for distance alone, drivers and fairway woods, and of no others. */
export function hitsForDistance(texts: readonly string[]): boolean {
  const all = texts.join('\n');
  return farClubs.test(all) && !stoppingClubs.test(all);
}
