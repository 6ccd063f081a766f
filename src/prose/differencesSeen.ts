import type { Design, Interval, MetricFindings } from '../findings/findings.ts';
import { pairAnswers } from './pairAnswer.ts';
import type { PairAnswer } from './statement.ts';

/** How a pair stands; `difference`: of a measure that was not tested for, it is told only that there is one. */
type SeenAs = PairAnswer['status'] | 'difference';

/** Pairs of one metric that stand alike, told in one breath: each of `ahead` beside each of `behind`. */
export interface DifferenceSeen {
  readonly as: SeenAs;
  readonly by: 'more' | 'less';
  readonly ahead: readonly string[];
  readonly behind: readonly string[];
  readonly firstLook: boolean;
  /** From the least to the greatest limit of these pairs, counted towards those ahead, SI; null where not judged. */
  readonly range: Interval | null;
}

/** Every pair of a metric in as few groups as there are things to say of them, the surest first. */
export function differencesSeen(
  metric: MetricFindings,
  design: Pick<Design, 'sequence'>,
): readonly DifferenceSeen[] {
  const answers = pairAnswers(metric, design);
  const byAhead = Map.groupBy(answers, (answer) => JSON.stringify([asOf(answer, metric), answer.ahead]));
  const groups = [...byAhead.values()].flatMap((own) => groupOf(own, metric) ?? []);
  // Those that are ahead of the same ones are told together.
  const byBehind = Map.groupBy(groups, ({ as, behind }) => JSON.stringify([as, behind.toSorted()]));
  return [...byBehind.values()].flatMap((own) => merged(own) ?? []);
}

function asOf({ status, alike }: PairAnswer, { role }: MetricFindings): SeenAs {
  // Two that may be alike, by checks that do not confirm it, are not told apart.
  if (status === 'not-confirmed' && alike) return 'cannot-tell';
  return role === 'exploratory' && (status === 'clear' || status === 'size-uncertain')
    ? 'difference'
    : status;
}

function groupOf(answers: readonly PairAnswer[], metric: MetricFindings): DifferenceSeen | null {
  const [first] = answers;
  if (first === undefined) return null;
  return {
    as: asOf(first, metric),
    by: first.by,
    ahead: [first.ahead],
    behind: answers.map(({ behind }) => behind),
    firstLook: answers.some(({ firstLook }) => firstLook),
    range: widest(answers.map(({ difference }) => difference?.ci ?? null)),
  };
}

function merged(groups: readonly DifferenceSeen[]): DifferenceSeen | null {
  const [first] = groups;
  if (first === undefined) return null;
  return {
    ...first,
    ahead: groups.flatMap(({ ahead }) => ahead),
    firstLook: groups.some(({ firstLook }) => firstLook),
    range: widest(groups.map(({ range }) => range)),
  };
}

function widest(ranges: readonly (Interval | null)[]): Interval | null {
  const known = ranges.flatMap((range) => (range === null ? [] : [range]));
  return known.length < ranges.length || known.length === 0
    ? null
    : [Math.min(...known.map(([low]) => low)), Math.max(...known.map(([, high]) => high))];
}
