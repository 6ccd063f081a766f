import type { Design, Findings } from '../findings/findings.ts';
import type { Source } from '../intake/authored/source.ts';

/** Who hit, and how fast: speeds in m/s, from the slow to the fast tenth of the counted shots. */
export type WhoHit =
  | {
      readonly kind: 'one-golfer';
      readonly role: string;
      readonly hand: 'right' | 'left' | null;
      readonly handicapBand: string | null;
      readonly clubSpeed: Design['clubSpeed'];
    }
  | { readonly kind: 'golfers'; readonly count: number; readonly clubSpeed: Design['clubSpeed'] };

/** Who hit the shots of a report. */
export function whoHit({ front }: Source, { design }: Findings): WhoHit {
  const { clubSpeed } = design;
  const [golfer] = front.hitters;
  if (design.hitters !== 1 || golfer === undefined) {
    const slowest = design.golfers.flatMap(({ clubSpeed: own }) => own ?? [])[0];
    const fastest = design.golfers.flatMap(({ clubSpeed: own }) => own ?? []).at(-1);
    const speeds =
      slowest === undefined || fastest === undefined ? null : { low: slowest.low, high: fastest.high };
    return { kind: 'golfers', count: design.hitters, clubSpeed: speeds };
  }
  return {
    kind: 'one-golfer',
    role: golfer.role,
    hand: golfer.hand ?? null,
    handicapBand: golfer.handicapBand ?? null,
    clubSpeed,
  };
}
