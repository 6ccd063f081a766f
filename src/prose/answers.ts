import { toCanonical } from '../trade/units.ts';
import type { Findings, MetricFindings } from '../findings/findings.ts';
import { isGap } from '../findings/verdict.ts';
import { leadersOf } from './leaders.ts';
import { openStatement } from './openStatement.ts';
import { pairAnswers } from './pairAnswer.ts';
import type { AnswerBlock, AnswerStatement, CalculatedBy, PairAnswer, SomePairs } from './statement.ts';

/** With this many contenders or fewer every pair is told; from four on who leads. */
const mostTold = 3;

/** The primary metrics, in the order the plan names them. */
export function primaryMetrics(findings: Findings): readonly MetricFindings[] {
  return findings.metrics.filter(({ role }) => role === 'primary');
}

const made = new WeakMap<MetricFindings, AnswerBlock>();

/** The answer of one main measure: what is told of all its pairs, in the fewest statements, the surest first. */
export function answerOf(metric: MetricFindings, { design }: Pick<Findings, 'design'>): AnswerBlock {
  const known = made.get(metric);
  if (known !== undefined) return known;
  const pairs = pairAnswers(metric, design);
  const block: AnswerBlock = {
    kind: 'answer',
    about: { of: 'metric', metric: metric.id },
    calculatedBy: calculatedBy(metric),
    statements:
      metric.byContender.length > mostTold
        ? (leadersOf(metric, pairs) ?? ofMany(metric, pairs))
        : merged(metric, pairs),
  };
  made.set(metric, block);
  return block;
}

/** From this difference on a calculated distance may head a page without saying so in the same breath. */
const surelyMoreM = toCanonical(5, 'yd');

/**
 * Who calculated the readings, where the answer has to say so: our flight model always, a monitor's own calculation of a
 * distance where a difference is under 5 yards.
 */
function calculatedBy(metric: MetricFindings): CalculatedBy {
  if (metric.readBy === 'flight-model') return 'flight-model';
  const small = metric.pairs.some(
    ({ verdict, estimate }) => isGap(verdict) && estimate !== null && Math.abs(estimate) < surelyMoreM,
  );
  const distance = metric.id === 'carry' || metric.id === 'total';
  return metric.class === 'modelled' && distance && small ? 'monitor' : null;
}

/** Among four or more of which none leads: all at once where no pair can be told, else the surest and how many more. */
function ofMany(metric: MetricFindings, pairs: readonly PairAnswer[]): readonly AnswerStatement[] {
  const about = { of: 'metric', metric: metric.id } as const;
  const judged = pairs.filter(({ status }) => status !== 'not-judged');
  const unsure = judged.filter(({ status, because }) => status === 'cannot-tell' && because === null);
  const untold = judged.every(
    ({ status, because }) => because === null && (status === 'cannot-tell' || status === 'level'),
  );
  if (untold && unsure.length > 0) {
    const ids = metric.byContender
      .map(({ id }) => id)
      .filter((id) => judged.some(({ ahead, behind }) => ahead === id || behind === id));
    return [
      { kind: 'together', about, of: 'cannot-tell', ids, matters: metric.matters, most: mostApart(judged) },
      ...notJudged(
        metric,
        pairs.filter(({ status }) => status === 'not-judged'),
      ),
    ];
  }
  const statements = merged(metric, pairs);
  const rest = statements.slice(mostTold);
  return rest.length === 0
    ? statements
    : [
        ...statements.slice(0, mostTold),
        { kind: 'more', about, count: rest.reduce((sum, one) => sum + pairsIn(one), 0) },
      ];
}

function pairsIn(statement: AnswerStatement): number {
  return 'answers' in statement ? statement.answers.length : 1;
}

/** The farthest that any two may be apart, SI; null where one of these pairs has no interval. */
function mostApart(answers: readonly PairAnswer[]): number | null {
  const ends = answers.map(({ difference }) =>
    difference === null ? null : Math.max(Math.abs(difference.ci[0]), Math.abs(difference.ci[1])),
  );
  const known = ends.filter((end) => end !== null);
  return known.length === ends.length ? Math.max(...known) : null;
}

/** Pairs that share a subject are told together. */
function merged(metric: MetricFindings, pairs: readonly PairAnswer[]): readonly AnswerStatement[] {
  const ids = metric.byContender.map(({ id }) => id);
  const of = (keep: (answer: PairAnswer) => boolean): readonly PairAnswer[] => pairs.filter(keep);
  const told = of(({ status }) => status === 'clear' || status === 'size-uncertain');
  const small = of(({ status }) => status === 'small');
  const level = of(({ status }) => status === 'level');
  const unsure = of(({ status, because }) => status === 'cannot-tell' && because === null);
  const hidden = of(({ status, because }) => status === 'cannot-tell' && because !== null);
  const seen = of(({ status }) => status === 'cause-unclear');
  const leaning = of(({ status }) => status === 'not-confirmed');
  return [
    ...bySubject(told, ids),
    ...bySubject(small, ids),
    ...together(level, 'level', ids, metric),
    ...openStatement(seen),
    ...leaning.map((answer): AnswerStatement => ({ kind: 'one', answer })),
    ...together(unsure, 'cannot-tell', ids, metric),
    ...openStatement(hidden),
    ...notJudged(
      metric,
      of(({ status }) => status === 'not-judged'),
    ),
  ];
}

/** Differences that share the one ahead, or the one behind, in one statement; all others by themselves. */
function bySubject(answers: readonly PairAnswer[], ids: readonly string[]): readonly AnswerStatement[] {
  const rest = [...answers];
  const statements: AnswerStatement[] = [];
  while (rest.length > 0) {
    const [first] = rest;
    if (first === undefined) break;
    const ahead = rest.filter((one) => one.ahead === first.ahead);
    const behind = rest.filter((one) => one.behind === first.behind);
    const shared = behind.length > ahead.length ? 'behind' : 'ahead';
    const [, ...others] = shared === 'ahead' ? ahead : behind;
    const group: SomePairs = [first, ...others];
    for (const one of group) rest.splice(rest.indexOf(one), 1);
    statements.push(
      group.length === 1
        ? { kind: 'one', answer: first }
        : {
            kind: 'ahead-of',
            about: { of: 'metric', metric: first.about.metric },
            shared,
            answers: group,
            all: group.length === ids.length - 1,
          },
    );
  }
  return statements;
}

/** Pairs that cannot be told, or are alike: all at once where every two are, else one against several. */
function together(
  answers: readonly PairAnswer[],
  of: 'cannot-tell' | 'level',
  ids: readonly string[],
  { id: metric, matters }: MetricFindings,
): readonly AnswerStatement[] {
  const about = { of: 'metric', metric } as const;
  if (answers.length === (ids.length * (ids.length - 1)) / 2 && ids.length > 2) {
    return [{ kind: 'together', about, of, ids, matters, most: mostApart(answers) }];
  }
  const shared = ids.find(
    (id) => answers.length > 1 && answers.every(({ ahead, behind }) => ahead === id || behind === id),
  );
  if (shared !== undefined && of === 'cannot-tell') {
    const others = answers.map(({ ahead, behind }) => (ahead === shared ? behind : ahead));
    return [
      {
        kind: 'cannot-place',
        about,
        id: shared,
        others,
        all: others.length === ids.length - 1,
        withinMatters: answers.every((one) => one.withinMatters),
        matters,
      },
    ];
  }
  return answers.map((answer) => ({ kind: 'one', answer }));
}

/** Each reason once: who was not judged says so in each of its pairs. */
function notJudged(metric: MetricFindings, answers: readonly PairAnswer[]): readonly AnswerStatement[] {
  const reason = ({ notJudged: why }: PairAnswer): string =>
    why?.because === 'too-few-shots' ? why.because : JSON.stringify(why);
  return [...Map.groupBy(answers, reason).values()].flatMap((alike): readonly AnswerStatement[] => {
    const [answer] = alike;
    if (answer?.notJudged?.because !== 'too-few-shots')
      return answer === undefined ? [] : [{ kind: 'one', answer }];
    // Shots are too few of a contender, whatever it is paired with: once of all that have as few.
    const few = new Set(alike.flatMap(({ notJudged: why }) => why?.contenders ?? []));
    const byCount = Map.groupBy(
      metric.byContender.filter(({ id }) => few.has(id)),
      ({ n }) => n,
    );
    return [...byCount].map(([fewest, own]) => ({
      kind: 'one',
      answer: {
        ...answer,
        notJudged: { because: 'too-few-shots', contenders: own.map(({ id }) => id), fewest },
      },
    }));
  });
}
