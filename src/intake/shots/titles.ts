import type { Report } from './collector.ts';
import type { Block } from './layout.ts';

const namesClubs = (block: Block): boolean =>
  block.club !== null ||
  block.headings.some(({ meaning }) => meaning.kind === 'role' && meaning.role === 'club');

/**
 * Where no block names a club and each of several stands under a title of its own, the titles are the clubs: nothing
 * else tells the blocks apart.
 */
export function withTitlesAsClubs(blocks: readonly Block[], report: Report): readonly Block[] {
  const titles = blocks.map(({ bareTitle }) => bareTitle);
  const apply = blocks.length > 1 && !blocks.some(namesClubs) && titles.every((title) => title !== null);
  if (!apply || new Set(titles).size < 2) return blocks;
  report('club-from-title', {
    line: blocks[0]?.line ?? null,
    expected: 'a column headed Club, or a line such as "Club: Head A" above the headings',
    found: titles.slice(0, 10).join(', '),
    cure: 'check that the line above each block of shots is the name of its club',
  });
  return blocks.map((block) => ({ ...block, club: block.bareTitle }));
}
