import { z } from 'zod';
import type { Questions } from '../authored/question.ts';
import { ask } from './ask.ts';

interface DraftForm {
  readonly indent: number;
  /** Keys that are answered or asked elsewhere. */
  readonly without?: readonly string[];
  /** Whether the questions are put here; else only their keys stand here, as they have been put before. */
  readonly first?: boolean;
}

/** The questions of a table that a draft asks, those that must be answered first, each with the line for its answer. */
export function draftQuestions(
  questions: Questions,
  { indent, without = [], first = true }: DraftForm,
): readonly string[] {
  const asked = Object.entries(questions).flatMap(([key, { answer, drafted: question }]) =>
    question === null || without.includes(key)
      ? []
      : [{ key, question: first ? question : null, must: !(answer instanceof z.ZodExactOptional), indent }],
  );
  return asked.toSorted((a, b) => Number(b.must) - Number(a.must)).flatMap(ask);
}
