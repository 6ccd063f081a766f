import { isList, type Answer, type AnswerEdit } from './answerEdit.ts';

/** Answers with one edit made; null where the edit leads through an answer in words, or to a place that is not there. */
export function changedAnswers(answers: Answer, path: AnswerEdit['path'], to: Answer | null): Answer | null {
  const [step, ...further] = path;
  if (step === undefined) return to;
  const here = isBlank(answers) ? (typeof step === 'number' ? [] : {}) : answers;
  if (typeof here === 'string') return null;
  if (isList(here)) {
    if (typeof step !== 'number' || step > here.length || (to === null && step === here.length)) return null;
    const inner = further.length === 0 ? to : changedAnswers(here[step] ?? '', further, to);
    if (inner === null && further.length > 0) return null;
    return here.toSpliced(step, 1, ...(inner === null ? [] : [inner]));
  }
  const key = String(step);
  const known = Object.hasOwn(here, key);
  if (to === null && !known && further.length === 0) return answers;
  const own = known ? here[key] : undefined;
  const inner = further.length === 0 ? to : changedAnswers(own ?? '', further, to);
  if (inner === null && further.length > 0) return null;
  const others = Object.entries(here).filter(([name]) => name !== key);
  if (inner === null) return Object.fromEntries(others);
  return Object.fromEntries(
    known
      ? Object.entries(here).map(([name, value]) => [name, name === key ? inner : value])
      : [...others, [key, inner]],
  );
}

/** Answers of which nothing is there are alike, whether as a blank, as a list or as a block. */
export function withoutBlanks(answers: Answer): Answer {
  if (isBlank(answers)) return '';
  if (typeof answers === 'string') return answers;
  if (isList(answers)) return answers.map(withoutBlanks);
  return Object.fromEntries(Object.entries(answers).map(([key, value]) => [key, withoutBlanks(value)]));
}

function isBlank(answer: Answer): boolean {
  if (typeof answer === 'string') return answer === '';
  return isList(answer) ? answer.length === 0 : Object.keys(answer).length === 0;
}
