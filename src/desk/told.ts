import type { Problem } from '../problems/problem.ts';
import { html, type Markup } from './markup.ts';
import { problemTextWithPlace } from './problemText.ts';

/** Something to be told before all else: what was done, or why it was not. */
export interface Told {
  readonly kind: 'done' | 'refused';
  readonly sentence: string;
  /** What stands in the way. */
  readonly problems?: readonly Problem[];
  /** Where it leads on to. */
  readonly way?: { readonly to: string; readonly words: string };
}

/** What was done and what was not, read out first. */
export function toldSection(told: readonly Told[]): Markup {
  return html`${told.map(
    ({ kind, sentence, problems = [], way }) =>
      html`<div class="notice ${kind}" role="${kind === 'refused' ? 'alert' : 'status'}">
        <p>${sentence}${way === undefined ? '' : html` <a href="${way.to}">${way.words}</a>`}</p>
        ${problems.length === 0 ? '' : problemList(problems)}
      </div>`,
  )}`;
}

const problemList = (problems: readonly Problem[]): Markup =>
  html`<ul>
    ${problems.map((problem) => html`<li>${problemTextWithPlace(problem)}</li>`)}
  </ul>`;
