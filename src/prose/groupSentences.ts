import type { MetricFindings, PairFindings } from '../findings/findings.ts';
import { isGap } from '../findings/verdict.ts';
import { metrics } from '../trade/metrics.ts';
import { firstLookShots, mattersText, openCause } from './pairSentence.ts';
import { toReader, unitFor } from './readerUnits.ts';
import type { Telling } from './telling.ts';
import { countWord, listed } from './words.ts';

/** With this many contenders or fewer every pair gets a sentence of its own. */
const mostTold = 3;

/**
 * Who is ahead and who behind among more than three contenders: "ahead in carry: Alder and Elm.", "Clearly behind
 * them: Cedar and Dogwood.", "Birch: cannot tell." The first is the end of a sentence that begins
 * with for whom. Null where pairs are told one by one: few contenders, no better side, or gaps that put nobody ahead.
 */
export function groupSentences(metric: MetricFindings, telling: Telling): readonly string[] | null {
  const { leading, byContender, pairs, better } = metric;
  if (byContender.length <= mostTold) return null;
  const open = pairs.find(({ credit }) => credit === 'open');
  if (open !== undefined) return [openSentence(open, metric, telling)];
  if (leading === null) return null;
  const names = (ids: readonly string[]): string => listed(ids.map(telling.nameOf));
  const judged = byContender
    .map(({ id }) => id)
    .filter((id) => pairs.some(({ a, b, verdict }) => (a === id || b === id) && verdict !== 'not-judged'));
  const behind = judged.filter((id) => !leading.includes(id));
  if (behind.length === 0) return noneBehind(judged, metric, telling);
  const ahead = leading.filter((id) =>
    behind.every((other) => isAhead(id, pairOf(pairs, id, other), better)),
  );
  const standing = (id: string): Standing =>
    together(ahead.map((other) => standingOf(pairOf(pairs, other, id))));
  const them = ahead.length === 1 ? 'it' : 'them';
  const level = leading.filter((id) => !ahead.includes(id));
  const unjudged = byContender.map(({ id }) => id).filter((id) => !judged.includes(id));
  const firstLook = byContender.some(({ id, n }) => judged.includes(id) && n < firstLookShots);
  return [
    `ahead in ${metrics[metric.id].name}${firstLook ? ', as a first look' : ''}: ${names(ahead)}.`,
    ...standings.flatMap((kind) => {
      const own = behind.filter((id) => standing(id) === kind);
      return own.length === 0 ? [] : [`${standingWords(kind, them)}: ${names(own)}.`];
    }),
    ...(level.length === 0 ? [] : [`${names(level)}: cannot tell.`]),
    ...(unjudged.length === 0 ? [] : [`${names(unjudged)}: not judged.`]),
  ];
}

/** Gaps seen or not, with what keeps their cause open in the same sentence. */
function openSentence(open: PairFindings, { id, pairs }: MetricFindings, telling: Telling): string {
  // Named where a report answers for more than one metric.
  const several = telling.findings.metrics.filter(({ role }) => role === 'primary').length > 1;
  const inMetric = several ? ` in ${metrics[id].name}` : '';
  const cause = openCause(open, telling);
  return pairs.some(({ verdict }) => isGap(verdict))
    ? `gaps${inMetric} were seen between ${telling.nouns}; ${cause}, so the cause is open.`
    : `no gap${inMetric} was seen between ${telling.nouns}; ${cause}, and that could hide one.`;
}

function noneBehind(
  judged: readonly string[],
  metric: MetricFindings,
  telling: Telling,
): readonly string[] | null {
  const told = metric.pairs.filter(({ verdict }) => verdict !== 'not-judged');
  if (told.some(({ verdict }) => isGap(verdict))) return null;
  const all = `the ${countWord(judged.length)} ${telling.nouns}`;
  const { name } = metrics[metric.id];
  const matters = toReader(metric.matters, metric.id, telling.system);
  const unit = unitFor(metric.id, telling.system);
  return told.every(({ verdict }) => verdict === 'level')
    ? [`${all} showed no gap in ${name} that matters: any gap is under ${mattersText({ matters, unit })}.`]
    : [`these shots cannot tell ${all} apart in ${name}.`];
}

/** From the surest to the least sure. */
const standings = ['clear', 'size-unsure', 'small'] as const;
type Standing = (typeof standings)[number];

function standingWords(standing: Standing, them: string): string {
  if (standing === 'clear') return `Clearly behind ${them}`;
  return standing === 'size-unsure'
    ? `Behind ${them}, size unsure`
    : `Behind ${them} by too little to matter`;
}

function standingOf(pair: PairFindings | null): Standing {
  if (pair?.verdict === 'clear') return 'clear';
  return pair?.verdict === 'small' ? 'small' : 'size-unsure';
}

/** Behind several, sure of the size only where it is the same behind each. */
function together(all: readonly Standing[]): Standing {
  const [first = 'size-unsure', ...others] = all;
  return others.every((other) => other === first) ? first : 'size-unsure';
}

function isAhead(id: string, pair: PairFindings | null, better: MetricFindings['better']): boolean {
  if (pair === null || pair.estimate === null) return false;
  const more = pair.estimate > 0 === (pair.a === id);
  return more === (better !== 'less') && isGap(pair.verdict) && !pair.overlays.includes('leans');
}

function pairOf(pairs: readonly PairFindings[], a: string, b: string): PairFindings | null {
  return pairs.find((pair) => (pair.a === a && pair.b === b) || (pair.a === b && pair.b === a)) ?? null;
}
