import type { AnswerField } from './answerFields.ts';
import type { ChangedAnswer } from './submittedAnswers.ts';

/** What is often the same for all that is compared. */
const keys: readonly string[] = ['supplied_by', 'sold_here'];

/** Whether an answer is taken for every contender that has none of its own. */
export const isForAll = ({ path }: Pick<AnswerField, 'path'>): boolean => path[0] === 'same';

/** The questions that can be answered once for all contenders: those that two of them or more leave open. */
export const fieldsForAll = (fields: readonly AnswerField[]): readonly AnswerField[] =>
  keys.flatMap((key) => {
    const [first, ...others] = openOnes(fields, key);
    if (first === undefined || others.length === 0) return [];
    return [{ ...first, path: ['same', key], name: `same.${key}` }];
  });

/** The changes with an answer for all put where none stands and none was typed. */
export function spreadOut(
  changed: readonly ChangedAnswer[],
  fields: readonly AnswerField[],
): readonly ChangedAnswer[] {
  const own = changed.filter(({ field }) => !isForAll(field));
  const typed = new Set(own.map(({ field }) => field.name));
  const spread = changed
    .filter(({ field }) => isForAll(field))
    .flatMap((answer) =>
      openOnes(fields, String(answer.field.path[1]))
        .filter(({ name }) => !typed.has(name))
        .map((field): ChangedAnswer => ({ field, typed: answer.typed })),
    );
  return [...own, ...spread];
}

const openOnes = (fields: readonly AnswerField[], key: string): readonly AnswerField[] =>
  fields.filter(
    ({ path, typed }) =>
      path.length === 3 && path[0] === 'contenders' && path[2] === key && typed.length === 0,
  );
