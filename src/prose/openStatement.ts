import type { AnswerStatement, PairAnswer } from './statement.ts';

/** Of pairs whose cause the order leaves open, that it does; of none, nothing. */
export function openStatement([first, ...others]: readonly PairAnswer[]): readonly AnswerStatement[] {
  if (first === undefined) return [];
  const answers = [first, ...others] as const;
  return [
    {
      kind: 'open',
      about: { of: 'metric', metric: first.about.metric },
      seen: answers.some(({ status }) => status === 'cause-unclear'),
      answers,
    },
  ];
}
