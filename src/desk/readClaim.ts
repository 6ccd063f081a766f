import { sayClaim, tellClaim } from '../prose/english/claims.ts';
import type { SupportedClaim } from '../prose/supportedClaims.ts';
import type { Telling } from '../prose/telling.ts';
import { sentence } from '../prose/words.ts';
import { html, type Markup } from './markup.ts';
import type { WeighedClaim } from './weighedClaim.ts';

type JudgedClaim = Extract<WeighedClaim, { readonly kind: 'judged' }>;

/** A claim as the page of its report prints it, with what was compared where its own words are others. */
export function readClaim({ statement, claim }: JudgedClaim, telling: Telling, id: string): Markup {
  const { said, restated, standing, supports } = tellClaim(statement, telling);
  const compared = sentence(sayClaim(statement.claim, telling));
  return html`<p class="claim" id="${id}">${said}</p>
    ${compared === sentence(claim.say) ? '' : html`<p class="help">What is compared: ${compared}</p>`}
    <p>${restated} <strong>${standing}</strong> ${supports}</p>`;
}

/** The claim that the shots support in place of one that does not stand as it is; null where they support none. */
export function fittingFor({ claim, statement, problems, fitting }: JudgedClaim): SupportedClaim | null {
  const stands = statement.claim.standing === 'borne-out' && problems.length === 0;
  if (stands || fitting === null) return null;
  const isSame =
    fitting.claim.say === claim.say &&
    fitting.claim.of === claim.of &&
    fitting.claim.byAtLeast?.typed === claim.byAtLeast?.typed;
  return isSame ? null : fitting;
}

/** The sentence that the shots support, above the button that takes it. */
export const fittingSentence = ({ claim }: SupportedClaim, id: string): Markup =>
  html`<div class="offered">
    <p>The shots support this sentence:</p>
    <p class="claim" id="${id}">${sentence(claim.say)}</p>
  </div>`;

/** Whether it can only stay with a word that it is not shown. */
export const mayBeUnproven = ({ claim, statement }: JudgedClaim): boolean =>
  statement.claim.standing === 'not-shown' && !claim.allowUnproven;
