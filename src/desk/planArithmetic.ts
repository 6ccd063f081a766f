import { sayFact, type PlanFact } from '../planning/planFact.ts';
import type { PlanTrouble } from '../planning/answersAsGiven.ts';
import type { WeighedPlan } from '../planning/weighPlan.ts';
import { capitalised } from '../prose/words.ts';
import { controlId } from './control.ts';
import { html, type Markup } from './markup.ts';
import { contenderField, planGroups } from './planFields.ts';
import { problemOf } from './planProblems.ts';
import { followed, proposalName } from './planSubmitted.ts';
import { problemText } from './problemText.ts';

/** What the answers so far come to, and what keeps them from coming to more; the part of the page that is replaced. */
export function planArithmetic({ facts, troubles, proposals }: WeighedPlan): Markup {
  return html`${facts.map(factMarkup)}
  ${
    troubles.length === 0
      ? ''
      : html`<p>${facts.length === 0 ? 'To work it out' : 'To work out the rest'}, this is still needed:</p>
          <ul>
            ${troubles.map(troubleItem)}
          </ul>`
  }
  ${followed.map(
    (key) => html`<input type="hidden" name="${proposalName(key)}" value="${proposals.get(key) ?? ''}" />`,
  )}`;
}

function factMarkup(fact: PlanFact): Markup {
  const { sentences, rows } = sayFact(fact);
  return html`${sentences.map((sentence) => html`<p>${sentence}</p>`)}
  ${
    rows.length === 0
      ? ''
      : html`<dl class="finds">
          ${rows.map(
            ({ label, text }) =>
              html`<div>
                <dt>${capitalised(label)}</dt>
                <dd>${text}</dd>
              </div>`,
          )}
        </dl>`
  }`;
}

/** Under the label of its question; the words of the metric play no part in where it leads. */
function troubleItem(trouble: PlanTrouble): Markup {
  const fields = [contenderField, ...planGroups('').flatMap((group) => group.fields)];
  const own = fields.find(({ name }) => name === trouble.key);
  const label = `${trouble.question.asks}?`;
  const link = own === undefined ? html`${label}` : html`<a href="#${controlId(own)}">${label}</a>`;
  return html`<li>${link}${trouble.typed === null ? '' : html` ${problemText(problemOf(trouble))}`}</li>`;
}
