import type { MetricFindings } from '../findings/findings.ts';
import { openStatement } from './openStatement.ts';
import type { AnswerStatement, PairAnswer } from './statement.ts';

const leading: readonly PairAnswer['status'][] = ['clear', 'size-uncertain', 'small'];

/**
 * Who leads among four or more, who cannot be told from any, who is behind and how surely; what the order leaves open
 * follows. Null where nobody is ahead of anybody: then pairs are told otherwise.
 */
export function leadersOf(
  metric: MetricFindings,
  pairs: readonly PairAnswer[],
): readonly AnswerStatement[] | null {
  const { leading: leaders, better } = metric;
  if (leaders === null) return null;
  const about = { of: 'metric', metric: metric.id } as const;
  const sure = pairs.filter(({ status }) => leading.includes(status));
  const isAhead = (id: string): boolean => sure.some(({ ahead }) => ahead === id);
  const isBehind = (id: string): boolean => sure.some(({ behind }) => behind === id);
  const first = leaders.filter(isAhead);
  if (first.length === 0) return null;
  const judged = metric.byContender
    .map(({ id }) => id)
    .filter((id) =>
      pairs.some(({ ahead, behind, status }) => (ahead === id || behind === id) && status !== 'not-judged'),
    );
  const rest = judged.filter((id) => !first.includes(id));
  const unplaced = rest.filter((id) => !isAhead(id) && !isBehind(id));
  const by = better === 'less' ? 'less' : 'more';
  const close = rest.filter((id) => leaders.includes(id) && !unplaced.includes(id));
  const behind = rest.filter((id) => !unplaced.includes(id) && !close.includes(id));
  const best = bestOf(metric, leaders);
  const howOf = (id: string): 'clear' | 'size-uncertain' | 'small' => {
    const own = sure
      .filter((one) => one.behind === id && first.includes(one.ahead))
      .map(({ status }) => status);
    if (own.length === 0) return 'size-uncertain';
    return own.every((status) => status === 'clear') && own.length === first.length
      ? 'clear'
      : own.every((status) => status === 'small')
        ? 'small'
        : 'size-uncertain';
  };
  const open = pairs.filter(({ because }) => because !== null);
  const unjudged = pairs.filter(({ status }) => status === 'not-judged');
  return [
    {
      kind: 'leaders',
      about,
      by,
      leaders: first,
      unplaced,
      close: close.length === 0 || best === null ? null : { ids: close, best },
      firstLook: sure.some(({ firstLook }) => firstLook),
    },
    ...(['clear', 'size-uncertain', 'small'] as const).flatMap((how): AnswerStatement[] => {
      const ids = behind.filter((id) => howOf(id) === how);
      return ids.length === 0 ? [] : [{ kind: 'behind', about, by, ids, how }];
    }),
    ...openStatement(open),
    ...unjudged
      .filter(
        (one, at) =>
          unjudged.findIndex((other) => JSON.stringify(other.notJudged) === JSON.stringify(one.notJudged)) ===
          at,
      )
      .map((answer): AnswerStatement => ({ kind: 'one', answer })),
  ];
}

/** The one of these with the best average; null where none has any. */
function bestOf({ byContender, better }: MetricFindings, ids: readonly string[]): string | null {
  const sign = better === 'less' ? -1 : 1;
  const means = byContender.flatMap(({ id, mean }) =>
    mean === null || !ids.includes(id) ? [] : [{ id, mean }],
  );
  return means.toSorted((x, y) => sign * (y.mean - x.mean))[0]?.id ?? null;
}
