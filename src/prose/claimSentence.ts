import type {
  ClaimStanding,
  Findings,
  MetricFindings,
  PairFindings,
  StandingId,
} from '../findings/findings.ts';
import { comparativeOf } from './comparatives.ts';
import { mattersText } from './pairSentence.ts';
import { formatNumber, printAt, printLimit, stepFor } from './numbers.ts';
import { shortUnit, toReader, unitFor, unitWord, withUnit } from './readerUnits.ts';
import type { Telling } from './telling.ts';
import { counted, countWord, listed, sentence } from './words.ts';

/** A claim as the page prints it: what was said, how it stands, and what the shots would bear. */
export interface ClaimLine {
  readonly said: string;
  /** The size that was said, in the reader's units, where it was said in others; else empty. */
  readonly restated: string;
  readonly standing: string;
  readonly bears: string;
}

const standingWords: Readonly<Record<StandingId, string>> = {
  'borne-out': 'Borne out',
  'weaker-than-said': 'Weaker than said',
  'not-shown': 'Not shown',
  contradicted: 'Contradicted',
};

/** All claims of a report, in the order in which the shop makes them. */
export function claimLines(telling: Telling): readonly ClaimLine[] {
  return telling.findings.claims.map((claim) => ({
    said: sentence(claim.say),
    restated: restated(claim, telling),
    standing: standingSentence(claim),
    bears: `The shots bear: ${whatTheShotsBear(claim, telling)}.`,
  }));
}

function restated(claim: ClaimStanding, telling: Telling): string {
  const unit = unitFor(claim.metric, telling.system);
  const known = [withUnit('1', unit).replace('1 ', ''), unitWord(unit), shortUnit(unit)];
  if (claim.byAtLeast === 0 || known.some((word) => claim.say.split(/[^\p{L}°/]+/u).includes(word)))
    return '';
  return `That is at least ${claimedSize(claim, telling)}.`;
}

/** "Weaker than said."; what was borne out without having been planned reads "Seen, not planned." */
export function standingSentence({ standing, planned }: ClaimStanding): string {
  return standing === 'borne-out' && !planned ? 'Seen, not planned.' : `${standingWords[standing]}.`;
}

/** What could be said instead, from "The shots bear:" on and without a full stop: "farther, 2 to 16 yards". */
export function whatTheShotsBear(claim: ClaimStanding, telling: Telling): string {
  const pair = pairOf(claim, telling.findings);
  if (pair === null) return 'nothing about this';
  const bears = claim.direction === 'tighter' ? spreadWords(claim, telling) : gapWords(claim, pair, telling);
  return `${bears}${openWords(claim, pair, telling)}`;
}

function pairOf(
  { direction, metric, of, than }: ClaimStanding,
  { metrics, straighter }: Findings,
): PairFindings | null {
  const pairs = direction === 'straighter' ? straighter : metrics.find(({ id }) => id === metric)?.pairs;
  return pairs?.find(({ a, b }) => (a === of && b === than) || (a === than && b === of)) ?? null;
}

/** The words for more and for less of what is claimed, the claimed way first. */
function wordsOf({ direction, metric }: ClaimStanding): readonly [towards: string, against: string] {
  if (direction === 'straighter') return ['nearer the line', 'farther from the line'];
  const { more, less } = comparativeOf(metric);
  return direction === 'less' ? [less, more] : [more, less];
}

function gapWords(claim: ClaimStanding, pair: PairFindings, telling: Telling): string {
  const { gap, metric, of, than } = claim;
  if (gap === null) return notJudgedWords(claim, telling);
  const read = (value: number): number => toReader(value, metric, telling.system);
  const unit = unitFor(metric, telling.system);
  const matters = mattersIn(claim, telling);
  const [lower, upper] = gap.ci;
  const step = stepFor(unit, read((upper - lower) / 2));
  const thresholds = [0, read(matters), -read(matters), read(claim.byAtLeast)];
  const print = (value: number): string => printLimit(read(value), step, unit, thresholds).replace('−', '');
  const [towards, against] = wordsOf(claim);
  const [claimed, other] = [telling.nameOf(of), telling.nameOf(than)];
  if (pair.overlays.includes('visits-alike')) {
    return 'no gap that they can tell, as shots of one turn resemble each other';
  }
  if (lower > 0) return `${towards}, ${print(lower)} to ${withUnit(print(upper), unit)}${tooSmall(pair)}`;
  if (upper < 0) {
    return `${other} ${towards} than ${claimed}, ${print(upper)} to ${withUnit(print(lower), unit)}${tooSmall(pair)}`;
  }
  if (pair.verdict === 'level') {
    return `no gap that matters, any gap is under ${mattersText({ matters: read(matters), unit })}`;
  }
  return (
    'no gap that they can tell, ' +
    `anything from ${withUnit(print(lower), unit)} ${against} to ${withUnit(print(upper), unit)} ${towards} would fit`
  );
}

function tooSmall({ verdict }: PairFindings): string {
  return verdict === 'small' ? ', too little to matter' : '';
}

/** The smallest gap that matters, SI. */
function mattersIn({ metric }: ClaimStanding, { findings }: Telling): number {
  return findings.metrics.find(({ id }) => id === metric)?.matters ?? 0;
}

function notJudgedWords({ of, than, metric }: ClaimStanding, telling: Telling): string {
  const short = shotCounts(
    of,
    than,
    telling.findings.metrics.find(({ id }) => id === metric),
  );
  const fewest = Math.min(...short);
  return fewest < 5
    ? `nothing, ${countWord(fewest)} ${fewest === 1 ? 'shot is' : 'shots are'} too few to judge`
    : 'nothing, every reading is the same';
}

function shotCounts(of: string, than: string, metric: MetricFindings | undefined): readonly number[] {
  const counts = metric?.byContender.filter(({ id }) => id === of || id === than).map(({ n }) => n) ?? [];
  return counts.length === 0 ? [0] : counts;
}

const fewestForSpread = 12;

function spreadWords(claim: ClaimStanding, telling: Telling): string {
  const { spread, metric, of, than } = claim;
  const own = telling.findings.metrics.find(({ id }) => id === metric);
  if (spread === null) {
    const fewest = Math.min(...shotCounts(of, than, own));
    if (telling.findings.design.hitters > 1)
      return 'nothing about spread, which is judged for one golfer only';
    return fewest < fewestForSpread
      ? `nothing about spread, as that takes ${fewestForSpread} shots with each and there are ${countWord(fewest)}`
      : 'nothing about spread';
  }
  if (spread.p >= 0.05) return 'no gap in spread that they can tell';
  const [steadier, other] = spread.tighter === 'of' ? [of, than] : [than, of];
  const named =
    spread.tighter === 'of'
      ? 'steadier'
      : `${telling.nameOf(steadier)} steadier than ${telling.nameOf(other)}`;
  return `${named}, ${sdWords(steadier, own, telling)} of spread against ${sdWords(other, own, telling)}`;
}

function sdWords(id: string, metric: MetricFindings | undefined, telling: Telling): string {
  const sd = metric?.byContender.find((summary) => summary.id === id)?.sd ?? null;
  if (metric === undefined || sd === null) return 'an unknown amount';
  const unit = unitFor(metric.id, telling.system);
  const value = toReader(sd, metric.id, telling.system);
  return withUnit(printAt(value, stepFor(unit, value)), unit);
}

/** What keeps a gap that was seen from being put down to the one it was seen with. */
function openWords({ gap, spread, of, than }: ClaimStanding, pair: PairFindings, telling: Telling): string {
  const seen = gap === null ? spread !== null && spread.p < 0.05 : gap.ci[0] > 0 || gap.ci[1] < 0;
  if (pair.credit === 'contender') {
    return seen && pair.overlays.includes('leans')
      ? '; worked out in other ways this mostly does not hold'
      : '';
  }
  if (gap === null && spread === null) return '';
  const cause = orderCause(pair, of, than, telling);
  return seen ? `; but ${cause}, so the cause is open` : `; and ${cause}, which could hide a gap`;
}

function orderCause({ overlays }: PairFindings, of: string, than: string, telling: Telling): string {
  if (overlays.includes('one-after-another')) {
    const { sequence } = telling.findings.design;
    const both = sequence?.filter((id) => id === of || id === than).map(telling.nameOf) ?? [];
    return both.length === 2
      ? `all shots with ${listed(both, 'came before those with')}`
      : 'they were hit one after another';
  }
  if (overlays.includes('order-unknown')) return 'the order of the shots is not known';
  if (overlays.includes('order-drift')) return 'results drifted during the test';
  if (overlays.includes('order-lever')) return 'one was hit later than the other on the whole';
  return 'they were hit in few turns';
}

/** How many claims stand how: "Two borne out, one not shown." Empty without claims. */
export function claimCount({ findings }: Telling): string {
  const ids: readonly StandingId[] = ['borne-out', 'weaker-than-said', 'not-shown', 'contradicted'];
  const parts = ids.flatMap((id) => {
    const count = findings.claims.filter(({ standing }) => standing === id).length;
    return count === 0 ? [] : [`${countWord(count)} ${standingWords[id].toLowerCase()}`];
  });
  return parts.length === 0 ? '' : sentence(`${counted(findings.claims.length, 'claim')}: ${listed(parts)}`);
}

/** A claimed size with its unit. */
export function claimedSize({ byAtLeast, metric }: ClaimStanding, telling: Telling): string {
  const unit = unitFor(metric, telling.system);
  const value = toReader(byAtLeast, metric, telling.system);
  const decimals = [0, 1, 2].find((places) => Math.abs(value - Number(value.toFixed(places))) < 0.0005) ?? 2;
  return withUnit(formatNumber(value, decimals), unit);
}
