import type { Findings, Interval, MetricFindings, PairFindings } from '../findings/findings.ts';
import { intervalTowards, sideOf } from './countedTowards.ts';
import { pairAnswers } from './pairAnswer.ts';
import type { Difference, PairAnswer } from './statement.ts';

/** What golfers' own shots say of a pair; ids and SI, counted towards the one that the pair's answer has ahead. */
export type GolferStatement =
  | {
      readonly kind: 'own-difference';
      readonly answer: PairAnswer;
      readonly golfer: string;
      readonly estimate: number;
      /** Null where there are too few shots to judge by. */
      readonly ci: Interval | null;
    }
  | {
      /** Golfers whose own difference is larger than each of the others', all pairs of golfers allowed for. */
      readonly kind: 'golfers-differ';
      readonly answer: PairAnswer;
      readonly more: readonly string[];
      readonly less: readonly string[];
    }
  | {
      /** Golfers on the side of most, the one ahead or the one behind. */
      readonly kind: 'who-gained';
      readonly answer: PairAnswer;
      readonly with: string;
      readonly than: string;
      readonly golfers: number;
      readonly clearly: number;
      readonly of: number;
      /** Chance of a count as uneven, were there no difference. */
      readonly byLuck: number;
    }
  | { readonly kind: 'another-golfer'; readonly answer: PairAnswer; readonly range: Difference['ci'] };

/** What golfers' own shots say of every pair of a metric, the surest pair first; empty for one golfer. */
export function golfersOf(
  metric: MetricFindings,
  { design }: Pick<Findings, 'design'>,
): readonly { readonly answer: PairAnswer; readonly statements: readonly GolferStatement[] }[] {
  if (design.hitters < 2) return [];
  return pairAnswers(metric, design).flatMap((answer) => {
    const { a, b } = answer.about;
    const pair = metric.pairs.find((one) => one.a === a && one.b === b);
    if (pair === undefined || pair.byHitter.length === 0) return [];
    const statements =
      design.unit === 'hitter'
        ? [...whoGained(pair, answer), ...anotherGolfer(pair, answer)]
        : ownDifferences(
            pair,
            answer,
            design.golfers.map(({ id }) => id),
          );
    return [{ answer, statements: [...statements, ...golfersDiffer(pair, answer)] }];
  });
}

/** Each golfer's own difference, in the order of the report's golfers. */
function ownDifferences(
  { byHitter }: PairFindings,
  answer: PairAnswer,
  order: readonly string[],
): readonly GolferStatement[] {
  return byHitter
    .toSorted((x, y) => order.indexOf(x.hitter) - order.indexOf(y.hitter))
    .map(({ hitter, estimate, ci }) => ({
      kind: 'own-difference',
      answer,
      golfer: hitter,
      estimate: sideOf(answer) * estimate,
      ci: ci === null ? null : intervalTowards(answer, ci),
    }));
}

function whoGained(
  { whoGained: count, byHitter }: PairFindings,
  answer: PairAnswer,
): readonly GolferStatement[] {
  if (count === null) return [];
  const { a, b } = answer.about;
  const fewer = byHitter.filter(({ estimate }) => estimate < 0).length;
  const moreWithA = count.more >= fewer;
  // Where less is wanted, those who had less gained.
  const gainedA = moreWithA === (answer.by === 'more');
  return [
    {
      kind: 'who-gained',
      answer,
      with: gainedA ? a : b,
      than: gainedA ? b : a,
      golfers: moreWithA ? count.more : fewer,
      clearly: moreWithA ? count.clearlyMore : count.clearlyLess,
      of: count.of,
      byLuck: count.byLuck,
    },
  ];
}

function anotherGolfer({ newHitter }: PairFindings, answer: PairAnswer): readonly GolferStatement[] {
  return newHitter === null
    ? []
    : [{ kind: 'another-golfer', answer, range: intervalTowards(answer, newHitter) }];
}

/** Golfers who differ from the same others stand together, so that what is said is true of every two. */
function golfersDiffer(
  { hittersDiffer, byHitter }: PairFindings,
  answer: PairAnswer,
): readonly GolferStatement[] {
  const known = hittersDiffer.flatMap(({ x, y }) => {
    const [first, second] = [x, y].map((golfer) => byHitter.find(({ hitter }) => hitter === golfer));
    if (first === undefined || second === undefined) return [];
    const xMore = sideOf(answer) * (first.estimate - second.estimate) > 0;
    return [xMore ? { more: x, less: y } : { more: y, less: x }];
  });
  const lessThan = Map.groupBy(known, ({ more }) => more);
  const groups = Map.groupBy([...lessThan], ([, own]) =>
    JSON.stringify(own.map(({ less }) => less).toSorted()),
  );
  return [...groups.values()].map((group) => ({
    kind: 'golfers-differ',
    answer,
    more: group.map(([more]) => more),
    less: group[0]?.[1].map(({ less }) => less) ?? [],
  }));
}
