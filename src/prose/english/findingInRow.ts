import type { MetricFindings, OpenCause } from '../../findings/findings.ts';
import { answerOf, primaryMetrics } from '../answers.ts';
import { pairAnswers } from '../pairAnswer.ts';
import type { Printing } from '../printSteps.ts';
import type { AnswerStatement, PairAnswer, StatementOf } from '../statement.ts';
import { printingFor, type Telling } from '../telling.ts';
import { capitalised, countWord } from '../words.ts';
import { byWhom } from './answers.ts';
import { sayClause } from './pairInWords.ts';
import { tooLittle } from './answerWords.ts';
import { sayStatement } from './statementInWords.ts';
import { comparisonOf } from './comparisons.ts';
import { averagedOver, causeOf, namesOf } from './names.ts';
import { byRange, mattersWords } from './ranges.ts';

/**
 * The whole answer of the first main measure for a row of a list, which says status, golfers and shots beside it: as
 * short as whole sentences can be, with a number, and nobody in the lead whom the report does not put there.
 */
export function findingInRow(telling: Telling): string {
  const [metric] = primaryMetrics(telling.findings);
  return metric === undefined ? 'Nothing was judged.' : findingOf(metric, telling);
}

/** The same of any main measure. */
export function findingOf(metric: MetricFindings, telling: Telling): string {
  const { statements, calculatedBy } = answerOf(metric, telling.findings);
  const unjudged = statements.filter(
    (one): one is StatementOf<'one'> => one.kind === 'one' && one.answer.status === 'not-judged',
  );
  const told = statements.filter((one) => !unjudged.some((other) => other === one));
  const whose = told.length === 0 ? '' : `${averagedOver(telling, countWord)}${byWhom(calculatedBy)}`;
  const clauses = [
    ...told.map((statement) => clauseOf(statement, metric, telling)),
    ...notJudged(unjudged, telling),
  ];
  return clauses.map((clause, index) => `${capitalised(index === 0 ? whose + clause : clause)}.`).join(' ');
}

function clauseOf(statement: AnswerStatement, metric: MetricFindings, telling: Telling): string {
  switch (statement.kind) {
    case 'one':
      return ofPair(statement.answer, telling);
    case 'ahead-of':
      return aheadOf(statement, telling);
    case 'together':
      return statement.of === 'level' ? alike(statement, telling) : sayStatement(statement, telling);
    case 'cannot-place':
      return statement.all
        ? `we cannot tell ${telling.the(statement.id)} from ${statement.others.length === 2 ? 'either' : 'any other'}`
        : `we cannot tell ${telling.the(statement.id)} from ${namesOf(statement.others, telling, 'or')}`;
    case 'open':
      return open(statement.answers, telling);
    case 'leaders':
      return sayStatement({ ...statement, firstLook: false }, telling);
    case 'behind':
      return behind(statement, metric, telling);
    case 'more':
      return `the report tells ${countWord(statement.count)} more`;
  }
}

/** "Heron carried farther than Wren, likely by 8 to 15 yards". */
function ofPair(answer: PairAnswer, telling: Telling): string {
  const printing = printingFor(answer.about.metric, telling);
  const { verb, base, [answer.by]: more } = comparisonOf(answer.about.metric);
  const [ahead, other] = [telling.the(answer.ahead), telling.the(answer.behind)];
  const look = answer.firstLook ? 'on a first look ' : '';
  switch (answer.status) {
    case 'size-uncertain':
      return `${look}${ahead} ${verb} ${more} than ${other}${likelyBy([answer], printing)}`;
    case 'cause-unclear':
      return open([answer], telling);
    case 'not-confirmed':
      return answer.alike
        ? sayClause(answer, telling)
        : `${ahead} may ${base} ${more} than ${other}${likelyBy([answer], printing)}, but ${unconfirmed(answer)}`;
    case 'cannot-tell':
      if (answer.withinMatters && answer.because === null && !answer.spellsAlike)
        return `${ahead} and ${other} were within about ${mattersWords(printing)} of each other`;
      return answer.because === null && !answer.spellsAlike
        ? sayClause(answer, telling)
        : `we cannot tell ${ahead} and ${other} apart`;
    case 'clear':
    case 'small':
    case 'level':
    case 'not-judged':
      return sayClause(answer, telling);
  }
}

function unconfirmed({ unconfirmed: checks }: PairAnswer): string {
  if (checks === null || checks.of === 1) return 'our one check does not confirm it';
  return checks.by === checks.of
    ? 'none of our checks confirms it'
    : `${countWord(checks.by)} of our ${countWord(checks.of)} checks do not confirm it`;
}

/** ", likely by 2 to 11 yards": from the least to the greatest limit of these; empty where one may not be ahead at all. */
function likelyBy(answers: readonly PairAnswer[], printing: Printing): string {
  const limits = answers.flatMap(({ difference }) => (difference === null ? [] : [difference.ci]));
  const ci = [Math.min(...limits.map(([low]) => low)), Math.max(...limits.map(([, high]) => high))] as const;
  return limits.length === 0 || ci[0] <= 0 ? '' : `, likely by ${byRange({ estimate: ci[0], ci }, printing)}`;
}

function aheadOf({ shared, answers, all }: StatementOf<'ahead-of'>, telling: Telling): string {
  const [first] = answers;
  const printing = printingFor(first.about.metric, telling);
  const { verb, verbs, [first.by]: more } = comparisonOf(first.about.metric);
  const look = answers.some(({ firstLook }) => firstLook) ? 'on a first look ' : '';
  if (shared === 'behind') {
    const names = answers.map(({ ahead }) => ahead);
    return `${look}${namesOf(names, telling)} ${verbs} ${more} than ${telling.the(first.behind)}${sizeOf(answers, printing)}`;
  }
  const ahead = `${look}${telling.the(first.ahead)} ${verb} ${more}`;
  if (answers.every(({ status }) => status === first.status)) {
    const others =
      all && answers.length === 2
        ? 'both others'
        : namesOf(
            answers.map((one) => one.behind),
            telling,
          );
    return `${ahead} than ${others}${sizeOf(answers, printing)}`;
  }
  const each = answers.map((one) => `than ${telling.the(one.behind)}${likelyBy([one], printing)}`);
  return `${ahead} ${each.join(', and ')}`;
}

function sizeOf(answers: readonly PairAnswer[], printing: Printing): string {
  return answers.every(({ status }) => status === 'small')
    ? `, by ${tooLittle}`
    : likelyBy(answers, printing);
}

function alike({ ids, about }: StatementOf<'together'>, telling: Telling): string {
  if (about.of === 'report') return '';
  const names = ids.length > 3 ? `the ${countWord(ids.length)} ${telling.nouns}` : namesOf(ids, telling);
  return `${names} ${comparisonOf(about.metric).alike}: any difference is likely under ${mattersWords(printingFor(about.metric, telling))}`;
}

/** Differences whose cause the order leaves open: who was ahead, by how much, and why nothing is credited. */
function open(answers: readonly PairAnswer[], telling: Telling): string {
  const seen = answers.filter(({ status }) => status === 'cause-unclear');
  const [first] = seen;
  if (first === undefined) return openUnseen(answers, telling);
  const { metric } = first.about;
  const { verb, [first.by]: more } = comparisonOf(metric);
  const did = metric === 'carry' ? 'went' : verb;
  const oneBehind = seen.every((one) => one.behind === first.behind);
  const parts = oneBehind
    ? [
        `${namesOf(
          seen.map(({ ahead }) => ahead),
          telling,
        )} ${did} ${more} than ${telling.the(first.behind)}`,
      ]
    : [...Map.groupBy(seen, ({ ahead }) => ahead)].map(([ahead, own], index) => {
        const others = namesOf(
          own.map((one) => one.behind),
          telling,
        );
        return `${telling.the(ahead)} ${index === 0 ? `${did} ` : ''}${more} than ${others}`;
      });
  const causes = new Set(seen.map(({ because }) => because));
  const reason =
    causes.size === 1 ? whyOpen(first.because, telling) : mayNotBe('the order may explain it', telling);
  return `${parts.join(', and ')}${likelyBy(seen, printingFor(metric, telling))}, ${reason}`;
}

function whyOpen(because: OpenCause | null, telling: Telling): string {
  switch (because) {
    case 'few-visits':
      return `in too few spells to say that it was ${causeOf(telling)}`;
    case 'order-unknown':
      return mayNotBe('the order is not known', telling);
    case 'drift':
      return mayNotBe('results drifted during the test', telling);
    case 'lever':
      return mayNotBe('some were mostly hit later', telling);
    case 'one-after-another':
    case null:
      return mayNotBe('they were hit one after another', telling);
  }
}

function mayNotBe(reason: string, telling: Telling): string {
  return `but ${reason}, so it may not be ${causeOf(telling)}`;
}

function openUnseen(answers: readonly PairAnswer[], telling: Telling): string {
  const [first] = answers;
  if (first === undefined) return '';
  return answers.length === 1
    ? `we cannot tell ${telling.the(first.ahead)} and ${telling.the(first.behind)} apart`
    : `we cannot tell ${countWord(answers.length)} pairs apart`;
}

function behind(
  { about, by, ids, how }: StatementOf<'behind'>,
  metric: MetricFindings,
  telling: Telling,
): string {
  if (about.of === 'report') return '';
  const { verb, verbs, more, less } = comparisonOf(about.metric);
  const who = ids.length > 2 ? `the other ${countWord(ids.length)}` : namesOf(ids, telling);
  const did = `${who} ${ids.length > 1 ? verbs : verb}`;
  const word = by === 'less' ? more : less;
  if (how === 'small') return `${did} ${word}, by ${tooLittle}`;
  const against = pairAnswers(metric, telling.findings.design).filter(
    (one) => ids.includes(one.behind) && metric.leading?.includes(one.ahead) === true,
  );
  const clearly = how === 'clear' ? 'clearly ' : '';
  return `${did} ${clearly}${word}${likelyBy(against, printingFor(about.metric, telling))}`;
}

/** Those who were not judged, for one reason all together. */
function notJudged(unjudged: readonly StatementOf<'one'>[], telling: Telling): readonly string[] {
  const [first, ...rest] = unjudged;
  if (first === undefined) return [];
  const { notJudged: why } = first.answer;
  const alike = rest.every(
    ({ answer: { notJudged: other } }) => other?.because === why?.because && other?.fewest === why?.fewest,
  );
  if (rest.length === 0 || !alike || why === null)
    return unjudged.map(({ answer }) => sayClause(answer, telling));
  const ids = [...new Set(unjudged.flatMap(({ answer }) => answer.notJudged?.contenders ?? []))];
  const all = { ...first.answer, notJudged: { ...why, contenders: ids } };
  return [sayClause(all, telling)];
}
