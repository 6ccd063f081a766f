import type { Source } from '../intake/authored/source.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';

/**
 * Session files that lie in two reports, byte for byte, under other golfers: whoever hit them would count twice.
 *
 * @param sources in the order in which the second of two is to be told of the first
 */
export function sameSessions(sources: readonly Source[]): readonly Problem[] {
  const first = new Map<string, Source>();
  return sources.flatMap((source) => {
    const { front, files, slug, placeOf } = source;
    return sessionHashes({ front, files }).flatMap(([name, hash]): Problem[] => {
      const other = first.get(hash);
      if (other === undefined) {
        first.set(hash, source);
        return [];
      }
      const [here, there] = [golfers(source), golfers(other)];
      if (other.slug === slug) return [];
      if (here === there) return twice(source, other, name);
      return [
        makeProblem('session-elsewhere', placeOf(['hitters'], 'key'), {
          expected: `the golfers of ${other.slug}, whose shots these are: ${there}`,
          found: `${name} is the same file, hit by ${here}`,
          cure: 'Give the same golfer the same id in both reports, or put the right session file here.',
        }),
      ];
    });
  });
}

/** The same test of the same things, told twice: it would count twice wherever tests are put together. */
function twice({ front, placeOf }: Source, other: Source, name: string): Problem[] {
  const compared = ({ contenders, varied }: Source['front']): string =>
    [varied, ...contenders.map(({ id }) => id).toSorted()].join(' ');
  if (
    compared(front) !== compared(other.front) ||
    [front, other.front].some(({ status }) => status !== 'published')
  )
    return [];
  return [
    makeProblem('session-twice', placeOf(['session']), {
      expected: 'each session in one published report',
      found: `${name} is the session of ${other.slug} too, with the same contenders`,
      cure: `Take one of the two reports out: delete the newer folder, or give it "status: superseded" and "superseded_by: ${other.slug}".`,
    }),
  ];
}

const golfers = ({ front }: Source): string =>
  front.hitters
    .map(({ id }) => id)
    .toSorted()
    .join(', ');

/** Names and hashes of the session files themselves; an order sheet may be the same in many reports. */
function sessionHashes({
  front,
  files,
}: Pick<Source, 'front' | 'files'>): readonly (readonly [name: string, sha256: string])[] {
  return files.filter(({ name }) => front.session.includes(name)).map(({ name, sha256 }) => [name, sha256]);
}
