import type { AnswerBlock, AnswerStatement, PairAnswer } from '../statement.ts';
import type { Telling } from '../telling.ts';
import { counted } from '../words.ts';
import { headOf, type HeadForm } from './answerHead.ts';
import { saysWhoIsAhead, statusesOf, toldCounted } from './countedAnswers.ts';
import { pastWord, statementInBrief, type BriefForm } from './statementInBrief.ts';

/** The whole answer of a measure in one sentence: "Carry of balls, one golfer: Heron clearly past Wren, ...". */
export function sayAnswerInBrief(
  block: AnswerBlock,
  telling: Telling,
  form: BriefForm,
  head: HeadForm = 'whole',
): string {
  return `${headOf(block, telling, { form: head })}: ${toldInBrief(block, telling, form)}.`;
}

/** The same without its head and its full stop, for places that have "Carry of balls, one golfer" by itself. */
export function toldInBrief(block: AnswerBlock, telling: Telling, form: BriefForm): string {
  const told = (form === 'bare' ? inOrder(block.statements, telling) : null) ?? [
    ...block.statements.map((statement) => statementInBrief(statement, telling, form)),
  ];
  return told.join('; ');
}

/** "Heron past Plover, and both past Wren": three of which each is ahead of the next; null of any others. */
function inOrder(statements: readonly AnswerStatement[], telling: Telling): readonly string[] | null {
  const [first, second, ...rest] = statements;
  if (first?.kind !== 'ahead-of' || second?.kind !== 'one' || rest.length > 0) return null;
  const { answer } = second;
  const [leads] = first.answers;
  if (leads === undefined || first.shared !== 'ahead' || !first.all || first.answers.length !== 2)
    return null;
  if (!saysWhoIsAhead(answer) || answer.status === 'small' || leads.status === 'small') return null;
  const past = pastWord(answer.about.metric, answer.by);
  return [
    `${telling.the(leads.ahead)} ${past} ${telling.the(answer.ahead)}, and both ${past} ${telling.the(answer.behind)}`,
  ];
}

/**
 * The same with only the first statement told and the other pairs counted; null where that would name a leader whom
 * somebody untold may equal.
 */
export function sayAnswerFirst(
  block: AnswerBlock,
  answers: readonly PairAnswer[],
  telling: Telling,
  form: Exclude<BriefForm, 'sized'>,
): string | null {
  const [first, ...rest] = block.statements;
  if (first === undefined || rest.length === 0) return null;
  const told = pairsOf(first);
  const others = untold(told, answers);
  const credited = told.filter(saysWhoIsAhead);
  if (told.length === 0 || isEqualled(credited, others)) return null;
  return `${headOf(block, telling)}: ${statementInBrief(first, telling, form)}; the other ${others.length === 1 ? 'pair' : counted(others.length, 'pair')}: ${statusesOf(others)}.`;
}

/**
 * The same with nothing of the other pairs, for a place that holds hardly a line; null where anybody untold may equal one
 * that is told to be ahead.
 */
export function sayLeadersAlone(
  block: AnswerBlock,
  answers: readonly PairAnswer[],
  telling: Telling,
  form: HeadForm,
): string | null {
  const told = leadersToldAlone(block, answers, telling);
  return told === null ? null : `${headOf(block, telling, { form })}: ${told}.`;
}

/** The same without its head and its full stop. */
export function leadersToldAlone(
  block: AnswerBlock,
  answers: readonly PairAnswer[],
  telling: Telling,
): string | null {
  const [first] = block.statements;
  if (first === undefined) return null;
  // Who leads among many says by itself who cannot be told from whom.
  if (first.kind === 'leaders') return statementInBrief(first, telling, 'bare');
  const told = pairsOf(first).filter(({ status }) => status !== 'not-judged');
  const named = told.flatMap(({ ahead, behind }) => [ahead, behind]);
  const others = untold(told, answers).filter(
    ({ status, ahead, behind }) =>
      status !== 'not-judged' && !(named.includes(ahead) && named.includes(behind)),
  );
  if (told.length === 0 || isEqualled(told, others)) return null;
  return statementInBrief(first, telling, 'bare');
}

function untold(told: readonly PairAnswer[], answers: readonly PairAnswer[]): readonly PairAnswer[] {
  return answers.filter(({ about: { a, b } }) => !told.some(({ about: own }) => own.a === a && own.b === b));
}

/** Whether any of these leaves it open that somebody is as good as one of those told to be ahead. */
function isEqualled(ahead: readonly PairAnswer[], others: readonly PairAnswer[]): boolean {
  return others.some(
    (other) =>
      !saysWhoIsAhead(other) && ahead.some((one) => one.ahead === other.ahead || one.ahead === other.behind),
  );
}

/** The pairs that a statement names; none where it speaks of a group. */
function pairsOf(statement: AnswerStatement): readonly PairAnswer[] {
  if (statement.kind === 'one') return [statement.answer];
  return statement.kind === 'ahead-of' || statement.kind === 'open' ? statement.answers : [];
}

/** The same with the pairs counted and not named, where names are many or long. */
export function sayAnswerCounted(
  block: AnswerBlock,
  answers: readonly PairAnswer[],
  telling: Telling,
): string {
  return `${headOf(block, telling)}: ${toldCounted(answers)}.`;
}
