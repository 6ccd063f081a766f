import type { Problem } from '../problems/problem.ts';
import { claimGround } from './claimGround.ts';
import { expectedBeforehand } from './expectedBeforehand.ts';
import { html, type Markup } from './markup.ts';
import { ownClaim } from './ownClaim.ts';
import { entryOfKey, problemsOfPart } from './partOfKey.ts';
import { problemHeading } from './problemHeading.ts';
import { problemText } from './problemText.ts';
import type { ShownPart } from './reportPart.ts';
import { claimId, standingClaims } from './standingClaims.ts';
import { supportedSection } from './supportedSection.ts';

/** What a report claims, what it could claim, and how a claim of the person's own reads. */
export function claimsPage(shown: ShownPart): Markup {
  const { report, typed } = shown;
  const ground = claimGround(report);
  const own = ground === null ? html`` : ownClaim(shown, ground);
  // What was typed a moment ago comes first.
  return html`${problemSection(problemsOfPart(report, 'claims'))} ${typed === null ? '' : own}
  ${expectedBeforehand(report)} ${standingClaims(shown, ground)}
  ${
    ground === null
      ? html`<p class="note">
          What the shots support stands here once
          <a href="${shown.places.report(report.slug)}">the questions about the test</a> are answered.
        </p>`
      : supportedSection(shown, ground)
  }
  ${typed === null ? own : ''}`;
}

/** Every problem of a claim leads to it. */
function problemSection(problems: readonly Problem[]): Markup {
  if (problems.length === 0) return html``;
  return html`<section aria-labelledby="problems" class="problems">
    <h2 id="problems">${problemHeading(problems)}</h2>
    <ul>
      ${problems.map((problem) => {
        const index = entryOfKey(problem.columnName ?? '');
        return index === null
          ? html`<li>${problemText(problem)}</li>`
          : html`<li><a href="#${claimId(index)}">Claim ${index + 1}</a>: ${problemText(problem)}</li>`;
      })}
    </ul>
  </section>`;
}
