import type { Problem } from '../problems/problem.ts';
import type { AnswerField } from './answerFields.ts';
import { control } from './control.ts';
import { html, type Markup } from './markup.ts';
import { controlName, type Submitted } from './submittedAnswers.ts';

interface ExclusionControls {
  /** What was typed and could not be written; null where nothing was. */
  readonly typed: Submitted | null;
  /** By the name of the field. */
  readonly problems: ReadonlyMap<string, readonly Problem[]>;
  /** Rules that are offered. */
  readonly rules: readonly string[];
}

/** The controls of questions about what is left out. */
export function exclusionControls(
  fields: readonly AnswerField[],
  { typed, problems, rules }: ExclusionControls,
): Markup {
  return html`${fields.map((field) =>
    control(field, {
      typed: typed?.[controlName(field)]?.filter((text) => text !== '') ?? field.typed,
      inFile: null,
      problems: problems.get(field.name) ?? [],
      suggested: field.path.at(-1) === 'rule' ? rules : [],
      standing: null,
    }),
  )}`;
}
