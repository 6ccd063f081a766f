import { isList, type Answer } from '../intake/edits/answerEdit.ts';
import type { Problem } from '../problems/problem.ts';
import { visible } from '../problems/visible.ts';
import { claimButtons, type ClaimAsk } from './claimForms.ts';
import type { ClaimGround } from './claimGround.ts';
import { claimsOnFile } from './claimsOnFile.ts';
import { html, type Markup } from './markup.ts';
import { entryOfKey, problemsOfPart } from './partOfKey.ts';
import { problemText } from './problemText.ts';
import { fittingFor, fittingSentence, mayBeUnproven, readClaim } from './readClaim.ts';
import type { ShownPart } from './reportPart.ts';
import { saysStanding, weighedClaim } from './weighedClaim.ts';

/** The claims of the file, each as it stands, with what can be made of it. */
export function standingClaims(shown: ShownPart, ground: ClaimGround | null): Markup {
  const claims = claimsOnFile(shown.report);
  return html`<section aria-labelledby="standing">
    <h2 id="standing">
      ${claims.length === 0 ? 'You claim nothing yet' : `What you claim (${claims.length})`}
    </h2>
    ${
      claims.length === 0
        ? html`<p class="note">
            Nobody has to. A claim is a sentence of yours that your report prints with what the shots make of
            it.
          </p>`
        : html`<ol class="claims">
            ${claims.map((typed, index) => standingClaim(typed, index, shown, ground))}
          </ol>`
    }
  </section>`;
}

/** The id under which a claim stands on the page; they count from 1. */
export const claimId = (index: number): string => `claim-${index + 1}`;

function standingClaim(typed: Answer, index: number, shown: ShownPart, ground: ClaimGround | null): Markup {
  const id = claimId(index);
  const weighed = ground === null ? null : weighedClaim(typed, ground);
  const judged = weighed?.kind === 'judged' ? weighed : null;
  const fitting = judged === null ? null : fittingFor(judged);
  const buttons: readonly { readonly ask: ClaimAsk; readonly words: string }[] = [
    ...(fitting === null ? [] : [{ ask: 'take' as const, words: 'Take this sentence' }]),
    ...(judged !== null && mayBeUnproven(judged)
      ? [{ ask: 'unproven' as const, words: 'Print it as not shown by the shots' }]
      : []),
    { ask: 'out', words: 'Take it out' },
  ];
  return html`<li id="${id}">
    ${
      judged === null || ground === null
        ? html`<p class="claim" id="${id}-said">${said(typed)}</p>`
        : readClaim(judged, ground.telling, `${id}-said`)
    }
    ${problemsOfClaim(shown, index).map(problemNote)}
    ${
      judged?.claim.allowUnproven === true && judged.statement.claim.standing === 'not-shown'
        ? html`<p class="help">Your report prints it, and with it that the shots do not show it.</p>`
        : ''
    }
    ${fitting === null ? '' : fittingSentence(fitting, `${id}-fits`)}
    ${claimButtons(shown, `${id}-said`, html`<input type="hidden" name="claim" value="${index}" />`, buttons)}
  </li>`;
}

const problemNote = (problem: Problem): Markup =>
  html`<p class="${problem.severity}">${problemText(problem)}</p>`;

/** What is wrong with a claim of the file besides how it stands. */
const problemsOfClaim = ({ report }: ShownPart, index: number): readonly Problem[] =>
  problemsOfPart(report, 'claims').filter(
    (problem) => entryOfKey(problem.columnName ?? '') === index && !saysStanding(problem),
  );

function said(typed: Answer): string {
  const say = typeof typed === 'string' || isList(typed) ? typed : typed['say'];
  return typeof say === 'string' && say.trim() !== '' ? visible(say) : 'A claim without a sentence';
}
