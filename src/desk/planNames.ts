import { mostContenders } from '../intake/authored/contenderChecks.ts';
import type { Problem } from '../problems/problem.ts';
import { controlId } from './control.ts';
import { fieldLabel } from './fieldLabel.ts';
import { html, type Markup } from './markup.ts';
import { contenderField } from './planFields.ts';
import { problemText } from './problemText.ts';
import { controlName } from './submittedAnswers.ts';

interface PlanNames {
  readonly names: readonly string[];
  /** Names that are offered for each row. */
  readonly offered: readonly string[];
  readonly problems: readonly Problem[];
}

/** A row for each thing that can be compared; one that stays empty does not count. */
export function planNames({ names, offered, problems }: PlanNames): Markup {
  const id = controlId(contenderField);
  const isWrong = problems.length > 0;
  const described = isWrong ? `${id}-help ${id}-error` : `${id}-help`;
  return html`<fieldset class="field" id="${id}" aria-describedby="${described}">
    <legend>${contenderField.label}</legend>
    ${isWrong ? html`<p class="error" id="${id}-error">${problems.map(problemText).join(' ')}</p>` : ''}
    <p class="help" id="${id}-help">${fieldLabel(contenderField.help ?? '')}.</p>
    <datalist id="${id}-offered">${offered.map((name) => html`<option value="${name}"></option>`)}</datalist>
    <div class="names">
      ${Array.from(
        { length: mostContenders },
        (_, index) =>
          html`<label for="${id}-${index}"
            ><span>Name ${index + 1}</span>
            <input
              type="text"
              id="${id}-${index}"
              name="${controlName(contenderField)}"
              value="${names[index] ?? ''}"
              autocomplete="off"
              list="${id}-offered"
              ${isWrong && index === 0 ? html`aria-invalid="true"` : ''}
          /></label>`,
      )}
    </div>
  </fieldset>`;
}
