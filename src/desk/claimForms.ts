import { asTyped, claimQuestions, type TypedClaim } from './typedClaim.ts';
import type { Claim } from '../intake/authored/claims.ts';
import { html, type Markup } from './markup.ts';
import type { ShownPart } from './reportPart.ts';
import { controlName } from './submittedAnswers.ts';

/** What the buttons of claims ask for. */
export type ClaimAsk = 'see' | 'add' | 'add-unproven' | 'take' | 'unproven' | 'out';

export const claimAsks: readonly ClaimAsk[] = ['see', 'add', 'add-unproven', 'take', 'unproven', 'out'];

/** A form of buttons only, each with what it asks for; what it is about is told by another element. */
export const claimButtons = (
  { action, hidden }: Pick<ShownPart, 'action' | 'hidden'>,
  about: string,
  carried: Markup,
  buttons: readonly { readonly ask: ClaimAsk; readonly words: string }[],
): Markup =>
  html`<form method="post" action="${action}">
    ${hidden} ${carried}
    <p class="actions">
      ${buttons.map(
        ({ ask, words }) =>
          html`<button type="submit" name="do" value="${ask}" aria-describedby="${about}">${words}</button>`,
      )}
    </p>
  </form>`;

/** A claim as a form sends it along unseen. */
export const carriedClaim = (claim: Claim): Markup => carriedTyped(asTyped(claim));

export const carriedTyped = (typed: TypedClaim): Markup =>
  html`${claimQuestions.map(
    (name) => html`<input type="hidden" name="${controlName({ name })}" value="${typed[name]}" />`,
  )}`;
