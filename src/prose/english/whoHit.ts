import type { Design } from '../../findings/findings.ts';
import type { Hitter } from '../../intake/authored/hitter.ts';
import { formatNumber } from '../numbers.ts';
import { toReader, unitFor, withUnit, type UnitSystem } from '../readerUnits.ts';
import type { WhoHit } from '../whoHit.ts';
import { capitalised, counted } from '../words.ts';

/** "One right-handed staff fitter, club speed 83 to 85 mph, handicap 6-10.", and to whom that is closest. */
export function sayWhoHit(who: WhoHit, system: UnitSystem): readonly string[] {
  const speed = who.clubSpeed === null ? null : speedWords(who.clubSpeed, system);
  if (who.kind === 'golfers') {
    const hit = capitalised(counted(who.count, 'golfer'));
    return speed === null
      ? [`${hit}; club speed is not recorded.`, yours]
      : [`${hit}, club speed ${speed} from the slowest to the fastest.`, closest(speed)];
  }
  const hand = who.hand === null ? '' : `${who.hand}-handed `;
  const band = who.handicapBand === null ? '' : `, handicap ${who.handicapBand}`;
  return speed === null
    ? [`One ${hand}golfer (${who.role})${band}; club speed is not recorded.`, yours]
    : [`One ${hand}golfer (${who.role}), club speed ${speed}${band}.`, closest(speed)];
}

const yours = 'Your own difference may be larger, smaller or reversed.';

function closest(speed: string): string {
  return `Closest to you if you swing about ${speed}; outside that we do not know.`;
}

function speedWords({ low, high }: NonNullable<Design['clubSpeed']>, system: UnitSystem): string {
  const print = (speed: number): string => formatNumber(toReader(speed, 'club_speed', system), 0);
  const unit = unitFor('club_speed', system);
  return print(low) === print(high)
    ? withUnit(print(low), unit)
    : `${print(low)} to ${withUnit(print(high), unit)}`;
}

/**
 * What golfers are called where each is told: by club speed and handicap, "88 mph, handicap 16-20"; those that would
 * read alike, or whose speed is not recorded, by the id that the report gives them.
 */
export function golferLabels(
  golfers: Design['golfers'],
  hitters: readonly Hitter[],
  system: UnitSystem,
): ReadonlyMap<string, string> {
  const labels = golfers.map(({ id, clubSpeed }) => {
    if (clubSpeed === null) return { id, label: null };
    const mean = (clubSpeed.low + clubSpeed.high) / 2;
    const speed = withUnit(
      formatNumber(toReader(mean, 'club_speed', system), 0),
      unitFor('club_speed', system),
    );
    const band = hitters.find((hitter) => hitter.id === id)?.handicapBand;
    return { id, label: band === undefined ? speed : `${speed}, handicap ${band}` };
  });
  return new Map(
    labels.map(({ id, label }) => {
      const alone = labels.filter((other) => other.label === label).length === 1;
      return [id, label === null ? `golfer ${id}` : alone ? label : `${label} (${id})`];
    }),
  );
}
