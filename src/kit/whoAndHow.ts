import type { DrawnFigure } from '../charts/figure.ts';
import { figureTraits } from '../charts/figureTraits.ts';
import { isReadingStated } from '../findings/fairness.ts';
import type { MetricFindings } from '../findings/findings.ts';
import { dateInWords } from '../prose/date.ts';
import { orderInWords } from '../prose/forWhom.ts';
import { shotsEach } from '../prose/pairSentence.ts';
import { primaryMetrics } from '../prose/answer.ts';
import { cautions } from '../prose/mind.ts';
import { capitalised, counted, listed } from '../prose/words.ts';
import { metrics, type MetricClass } from '../trade/metrics.ts';
import type { Report } from './report.ts';

/** "One golfer", "Three golfers". */
export function golfers({ findings }: Report): string {
  return capitalised(counted(findings.design.hitters, 'golfer'));
}

/** "One golfer, 12 shots each", "Three golfers, 36 shots with each ball". */
export function golfersAndShots(report: Report): string {
  const shots = shotsEach(countsOf(report), report.telling.noun);
  const one = report.findings.design.hitters === 1;
  // Of several golfers "each" could be a golfer.
  return `${golfers(report)}, ${one ? shots.replace(/ with each .*$/, ' each') : shots}`;
}

/** "One golfer, 12 shots with each ball in turn, in changing order; hit 18 April 2026." */
export function golfersShotsAndOrder(report: Report): string {
  const { findings, telling, source } = report;
  const order = orderInWords(findings.design.order);
  return (
    `${golfers(report)}, ${shotsEach(countsOf(report), telling.noun)} ${order}; ` +
    `hit ${dateInWords(source.front.date, source.locale)}.`
  );
}

function countsOf({ findings }: Report): readonly number[] {
  return primaryMetrics(findings)[0]?.byContender.map(({ n }) => n) ?? [];
}

const classWords: Readonly<Record<MetricClass, string>> = {
  measured: 'was measured',
  derived: 'was worked out from other readings',
  modelled: 'was calculated, not seen',
  estimated: 'was estimated by the monitor',
};

const notSaid = 'not said';

/** How the main readings came about: "Carry was calculated, not seen." That nobody says so is no measurement. */
export function readingWords({ findings, source: { front } }: Report): string {
  const how = ({ id, class: kind, readBy }: MetricFindings): string => {
    if (readBy === 'flight-model') return 'was calculated by our flight model, not measured';
    return kind === 'measured' && !isReadingStated(front, id) ? notSaid : classWords[kind];
  };
  return [...Map.groupBy(primaryMetrics(findings), how)]
    .map(([words, own]) => {
      const names = listed(own.map(({ id }) => metrics[id].name));
      const were = own.length > 1 ? 'were' : 'was';
      return words === notSaid
        ? `How ${names} ${were} read is not recorded.`
        : `${capitalised(names)} ${words.replace(/^was/, were)}.`;
    })
    .join(' ');
}

/** How the main readings came about, and the gravest caution besides. */
export function mindInShort(report: Report): string {
  const [gravest = ''] = cautions(report.telling).filter((words) => !/calculated, not seen\.$/.test(words));
  return `${readingWords(report)} ${gravest}`.trim();
}

/** What shows that a chart is not of readings alone; empty for any other chart. */
export function modelWords({ chart }: DrawnFigure): string {
  return figureTraits[chart].modelled ? 'An estimate by a flight model, not measured.' : '';
}

/** The same in the fewest words, where there is little room. */
export function standingInBrief({ source: { front } }: Report): string {
  return [
    front.inventedData ? 'Invented data.' : '',
    front.status === 'superseded' ? 'Replaced.' : '',
    front.corrections.length > 0 ? 'Corrected.' : '',
    front.status === 'draft' ? 'Draft.' : '',
  ]
    .filter((words) => words !== '')
    .join(' ');
}

/** What must stand with anything cut out of a report that is not as it was; empty otherwise. */
export function standing({ source: { front, locale } }: Report): string {
  const latest = front.corrections
    .map(({ date }) => date)
    .toSorted()
    .at(-1);
  return [
    front.inventedData ? 'Invented data.' : '',
    front.status === 'superseded' ? 'Replaced by a newer report.' : '',
    latest === undefined ? '' : `Corrected ${dateInWords(latest, locale)}.`,
    front.status === 'draft' ? 'Draft, not published.' : '',
  ]
    .filter((words) => words !== '')
    .join(' ');
}
