import type { Findings, MetricFindings } from '../../../findings/findings.ts';
import { metrics } from '../../../trade/metrics.ts';
import type { Telling } from '../../telling.ts';
import { capitalised, counted, listed } from '../../words.ts';
import { orderInWords, shotsEach } from '../order.ts';

/** "One golfer", "Three golfers". */
function golfers({ design }: Findings): string {
  return capitalised(counted(design.hitters, 'golfer'));
}

/** "One golfer, 12 shots with each ball"; `counts` are the counted shots with each. */
export function golfersAndShots({ findings, noun }: Telling, counts: readonly number[]): string {
  return `${golfers(findings)}, ${shotsEach(counts, noun)}`;
}

/** "12 shots with each ball, in rounds, one of each." */
export function shotsAndOrder({ findings, noun }: Telling, counts: readonly number[]): string {
  return `${capitalised(shotsEach(counts, noun))}, ${orderInWords(findings.design.order)}.`;
}

/** "One golfer, 12 shots with each ball; hit 18 April 2026."; `day` is in words. */
export function golfersShotsAndDay(telling: Telling, counts: readonly number[], day: string): string {
  return `${golfersAndShots(telling, counts)}; hit ${day}.`;
}

/** "One golfer, 12 shots with each ball, in rounds, one of each; hit 18 April 2026." */
export function golfersShotsAndOrder(telling: Telling, counts: readonly number[], day: string): string {
  const order = orderInWords(telling.findings.design.order);
  return `${golfersAndShots(telling, counts)}, ${order}; hit ${day}.`;
}

/** How many shots no figure counts; empty where none was left out. */
export function leftOutWords({ contenders }: Findings): string {
  const count = contenders.reduce((sum, { excluded }) => sum + excluded, 0);
  return count === 0 ? '' : `${capitalised(counted(count, 'shot'))} left out.`;
}

/** How readings came about, where somebody says so; `stated` tells for which measured ones that is so. */
export function readingWords(
  all: readonly Pick<MetricFindings, 'id' | 'class' | 'readBy'>[],
  stated: (metric: MetricFindings['id']) => boolean,
): string {
  const how = ({ id, class: kind, readBy }: (typeof all)[number]): Reading => {
    if (readBy === 'flight-model') return 'flight-model';
    return kind === 'measured' && !stated(id) ? 'not-stated' : kind;
  };
  return [...Map.groupBy(all, how)]
    .map(([reading, own]) => {
      const names = listed(own.map(({ id }) => metrics[id].name));
      const were = own.length > 1 ? 'were' : 'was';
      return reading === 'not-stated'
        ? `How ${names} ${were} measured is not recorded.`
        : `${capitalised(names)} ${were} ${readings[reading]}.`;
    })
    .join(' ');
}

type Reading = MetricFindings['class'] | 'flight-model' | 'not-stated';

const readings: Readonly<Record<Exclude<Reading, 'not-stated'>, string>> = {
  measured: 'measured',
  derived: 'calculated from other readings',
  modelled: 'calculated from the launch, not watched',
  estimated: 'estimated by the monitor, not measured',
  'flight-model': 'calculated by our own flight model, not measured',
};

/** What shows that a chart is not of readings alone. */
export const modelWords = 'An estimate by a flight model, not measured.';
