import { notRecorded } from '../prose/disclosureGroup.ts';
import { visible } from '../problems/visible.ts';
import type { Problem } from '../problems/problem.ts';
import { asChoice, type AnswerField, type Choice } from './answerFields.ts';
import { fieldLabel } from './fieldLabel.ts';
import { choice } from './choice.ts';
import { html, type Markup } from './markup.ts';
import { problemText } from './problemText.ts';
import { controlName } from './submittedAnswers.ts';
import { textArea } from './textArea.ts';

/** What else is known of an answer when its form is shown. */
export interface ControlState {
  /** What stands in the control. */
  readonly typed: readonly string[];
  /** What the file says, where that is something else; null where it is the same. */
  readonly inFile: readonly string[] | null;
  readonly problems: readonly Problem[];
  /** Answers that are offered. */
  readonly suggested: readonly string[];
  /** What the shop answers for all its reports; null where it does not. */
  readonly standing: string | null;
}

/** The id of a field's control; letters, digits and hyphens. */
export const controlId = ({ path }: AnswerField): string => `answer-${path.join('-')}`;

/** One answer with its label, its help and what is wrong with it. */
export function control(field: AnswerField, state: ControlState): Markup {
  const id = controlId(field);
  const notes = notesOf(field, state);
  const noteMarkup = notes.map(
    ({ kind, text }, index) => html`<p class="${kind}" id="${id}-note-${index}">${text}</p>`,
  );
  const described =
    notes.length === 0
      ? ''
      : html` aria-describedby="${notes.map((_, index) => `${id}-note-${index}`).join(' ')}"`;
  const invalid = state.problems.some(({ severity }) => severity === 'error')
    ? html` aria-invalid="true"`
    : '';
  if (field.control === 'one-of' || field.control === 'some-of') {
    return html`<fieldset class="field" id="${id}" ${described}>
      <legend>${field.label}</legend>
      ${noteMarkup}
      <div class="choices">${choices(field, state, id)}</div>
    </fieldset>`;
  }
  const [typed = ''] = state.typed;
  const name = controlName(field);
  const offered = new Set([
    ...state.suggested,
    ...(field.usual === null ? [] : [field.usual]),
    ...(field.required ? [] : [notRecorded]),
  ]);
  const box =
    field.control === 'lines'
      ? textArea({ id, name, rows: 4, text: typed, attributes: html`${described} ${invalid}` })
      : field.control === 'day'
        ? html`<input type="date" id="${id}" name="${name}" value="${typed}" ${described} ${invalid} />`
        : html`<input
              type="text"
              id="${id}"
              name="${name}"
              value="${typed}"
              autocomplete="off"
              list="${id}-offered"
              ${described}
              ${invalid}
            /><datalist id="${id}-offered">
              ${[...offered].map((answer) => html`<option value="${answer}"></option>`)}
            </datalist>`;
  return html`<div class="field">
    <label for="${id}">${field.label}</label>
    ${noteMarkup} ${box}
  </div>`;
}

interface Note {
  readonly kind: 'help' | 'error' | 'warning';
  readonly text: string;
}

function notesOf(
  field: AnswerField,
  { inFile, problems, suggested, standing }: ControlState,
): readonly Note[] {
  const chosen = field.control === 'one-of' || field.control === 'some-of' || field.control === 'day';
  return [
    ...problems.map((problem): Note => ({
      kind: problem.severity === 'error' ? 'error' : 'warning',
      text: problemText(problem),
    })),
    ...(inFile === null
      ? []
      : [
          {
            kind: 'warning' as const,
            text: `In the file now: ${shown(inFile)}. What you typed stands here.`,
          },
        ]),
    ...(field.help === null ? [] : [{ kind: 'help' as const, text: `${fieldLabel(field.help)}.` }]),
    ...(standing === null
      ? []
      : [
          {
            kind: 'help' as const,
            text: `For all your reports: ${visible(standing)}. Answer only what differs.`,
          },
        ]),
    ...(chosen && suggested.length > 0
      ? [{ kind: 'help' as const, text: `Last time: ${visible(suggested.join(', '))}.` }]
      : []),
  ];
}

const shown = (typed: readonly string[]): string =>
  typed.length === 0 ? 'nothing' : visible(typed.join(', '));

function choices(field: AnswerField, { typed }: ControlState, id: string): Markup {
  const type = field.control === 'one-of' ? 'radio' : 'checkbox';
  // A choice without a value is what holds while there is no answer.
  const isOn = ({ value }: Choice): boolean =>
    value === '' ? typed.length === 0 : typed.some((one) => one.toLowerCase() === value.toLowerCase());
  const hasDefault = field.choices.some(({ value }) => value === '');
  const known = [
    ...field.choices,
    ...(field.required || hasDefault || type === 'checkbox' ? [] : [asChoice(notRecorded)]),
  ];
  // What stands there and is none of them is not lost by saving the form.
  const others = typed.filter((one) => !known.some(({ value }) => value.toLowerCase() === one.toLowerCase()));
  const name = controlName(field);
  return html`${type === 'checkbox' ? html`<input type="hidden" name="${name}" value="" />` : ''}${[
    ...known,
    ...others.map(asChoice),
  ].map(({ value, words }, index) =>
    choice({ type, id: `${id}-${index}`, name, value, checked: isOn({ value, words }), words }),
  )}`;
}
