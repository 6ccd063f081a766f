import type { ShotColumn } from '../intake/shots/shotFile.ts';
import type { Hold, OpenCause, OverlayId, VerdictId } from './findings.ts';
import { onlyLeans } from './holds.ts';
import { fewestHittersAsUnit, fewShots, littlePower } from './thresholds.ts';
import { isGap } from './verdict.ts';

interface OverlayFacts {
  readonly hitters: number;
  readonly primary: boolean;
  readonly column: ShotColumn;
  readonly verdict: VerdictId;
  /** Counted shots with either contender. */
  readonly counts: readonly [number, number];
  readonly openBecause: OpenCause | null;
  readonly visitsAlike: boolean;
  /** Whether nothing matters on average, and that cannot be said of each golfer. */
  readonly golfersApart: boolean;
  readonly holds: readonly Hold[];
  readonly restsOnOneShot: boolean;
  /** Whether the answer is another one with the left-out shots counted. */
  readonly dependsOnLeftOut: boolean;
  /** Whether readings are missing more often for one than for the other. */
  readonly unevenlyRead: boolean;
  readonly nearDevice: boolean;
  /** Whether what counts as enough to matter is far from what is usual. */
  readonly mattersUnusual: boolean;
  readonly powerAtMatters: number | null;
}

const openOverlay: Readonly<Record<OpenCause, OverlayId>> = {
  'one-after-another': 'one-after-another',
  'order-unknown': 'order-unknown',
  lever: 'order-lever',
  drift: 'order-drift',
  'few-visits': 'order-few-visits',
};

/** What a reader has to be told in the same breath as a pair's verdict, the gravest first. */
export function pairOverlays(facts: OverlayFacts): readonly OverlayId[] {
  const { column, counts, openBecause, verdict } = facts;
  const fewest = Math.min(...counts);
  const judged = verdict !== 'not-judged';
  const when = (holds: boolean, overlay: OverlayId): readonly OverlayId[] => (holds ? [overlay] : []);
  return [
    ...(openBecause === null ? [] : [openOverlay[openBecause]]),
    ...when(facts.dependsOnLeftOut, 'depends-on-left-out'),
    ...when(judged && facts.unevenlyRead, 'uneven-readings'),
    ...when(judged && facts.mattersUnusual, 'matters-unusual'),
    ...when(facts.visitsAlike, 'visits-alike'),
    ...when(facts.golfersApart, 'golfers-apart'),
    ...when(judged && onlyLeans(facts.holds), 'leans'),
    ...when(facts.restsOnOneShot, 'rests-on-one-shot'),
    ...when(facts.nearDevice, 'near-device'),
    ...when(column.class === 'modelled' || column.class === 'estimated', 'modelled-reading'),
    ...when(judged && facts.hitters === 1 && fewest < fewShots, 'few-shots'),
    ...when(isGap(verdict) && (facts.powerAtMatters ?? 1) < littlePower, 'found-too-big'),
    ...when(facts.hitters === 1, 'one-hitter'),
    ...when(facts.hitters > 1 && facts.hitters < fewestHittersAsUnit, 'few-hitters'),
    'one-example',
    ...when(!facts.primary, 'not-planned'),
  ];
}
