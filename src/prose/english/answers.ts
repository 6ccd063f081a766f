import type { AnswerBlock, AnswerStatement, CalculatedBy } from '../statement.ts';
import type { Telling } from '../telling.ts';
import { capitalised, countWord } from '../words.ts';
import { averagedOver, testOf } from './names.ts';
import type { Place } from './openCause.ts';
import { sayStatement } from './statementInWords.ts';

/** For whom an answer holds on its page and who calculated it, before its first statement; empty for one that only says why not. */
export function sayOpening({ calculatedBy, statements: [first] }: AnswerBlock, telling: Telling): string {
  return first === undefined || onlySaysWhy(first)
    ? ''
    : `${averagedOver(telling, countWord)}${byWhom(calculatedBy)}`;
}

/** The answer of a main measure on its page, sentence by sentence. */
export function sayAnswer(block: AnswerBlock, telling: Telling): readonly string[] {
  return sentences(block, averagedOver(telling, countWord), telling, 'page');
}

/** The same where it stands alone: the first sentence says what was tested, and by how many golfers. */
export function sayAnswerAlone(block: AnswerBlock, telling: Telling): readonly string[] {
  return sentences(block, testOf(telling, countWord), telling, 'alone');
}

function sentences(
  { calculatedBy, statements }: AnswerBlock,
  whose: string,
  telling: Telling,
  place: Place,
): readonly string[] {
  return statements.map((statement, index) => {
    const clause = sayStatement(statement, telling, place);
    if (index > 0 || onlySaysWhy(statement)) return `${capitalised(clause)}.`;
    return `${capitalised(`${whose}${byWhom(calculatedBy)}${clause}`)}.`;
  });
}

/** Whether a statement says of no golfer anything, so that it needs no "on average over these". */
function onlySaysWhy(statement: AnswerStatement): boolean {
  return statement.kind === 'one' && statement.answer.status === 'not-judged';
}

/** Who calculated the readings, at the head of a sentence; empty where that need not be said. */
export function byWhom(calculatedBy: CalculatedBy): string {
  if (calculatedBy === null) return '';
  return calculatedBy === 'monitor' ? "by the monitor's own calculation, " : 'by our own flight model, ';
}
