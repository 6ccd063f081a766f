import type { Design, MetricFindings, PairFindings } from '../findings/findings.ts';
import { isWithinMatters } from '../findings/withinMatters.ts';
import type { PairAnswer } from './statement.ts';

/** The answer about one pair, counted towards whoever is ahead. */
export function pairAnswer(
  pair: PairFindings,
  metric: MetricFindings,
  { sequence }: Pick<Design, 'sequence'>,
): PairAnswer {
  const { a, b, estimate, ci } = pair;
  const by = metric.better === 'less' ? 'less' : 'more';
  const ahead = pair.ahead ?? a;
  const behind = ahead === a ? b : a;
  // Counted towards the one ahead, in the direction that is wanted.
  const sign = (ahead === a ? 1 : -1) * (by === 'less' ? -1 : 1);
  const [low, high] = ci ?? [0, 0];
  const place = (id: string): number => sequence?.indexOf(id) ?? -1;
  const failed = pair.holds.filter(({ state }) => state === 'fails').length;
  return {
    kind: 'pair-answer',
    about: { of: 'pair', metric: metric.id, a, b },
    status: pair.status,
    ahead,
    behind,
    by,
    difference:
      estimate === null || ci === null
        ? null
        : { estimate: sign * estimate, ci: sign > 0 ? [low, high] : [-high, -low] },
    matters: metric.matters,
    firstLook: pair.firstLook,
    alike: pair.verdict === 'level' || pair.verdict === 'too-close',
    withinMatters: ci !== null && isWithinMatters(ci, metric.matters),
    spellsAlike: pair.overlays.includes('visits-alike'),
    because: pair.openBecause,
    hitLater: pair.hitLater,
    places:
      sequence !== null && place(a) >= 0 && place(b) >= 0
        ? { ahead: place(ahead), behind: place(behind), of: sequence.length }
        : null,
    unconfirmed: pair.status === 'not-confirmed' ? { by: failed, of: pair.holds.length } : null,
    notJudged: pair.notJudged,
  };
}

/** The answers of all pairs of a metric, the surest first. */
export function pairAnswers(metric: MetricFindings, design: Pick<Design, 'sequence'>): readonly PairAnswer[] {
  return surestFirst(metric).map((pair) => pairAnswer(pair, metric, design));
}

/** The pairs of a metric, the surest answer first. */
export function surestFirst({ pairs }: MetricFindings): readonly PairFindings[] {
  return pairs.toSorted((x, y) => sureness.indexOf(x.status) - sureness.indexOf(y.status));
}

const sureness: readonly PairAnswer['status'][] = [
  'clear',
  'size-uncertain',
  'small',
  'level',
  'cause-unclear',
  'not-confirmed',
  'cannot-tell',
  'not-judged',
];
