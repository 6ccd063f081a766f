import { saySupport } from '../prose/english/claims.ts';
import { sayExplored } from '../prose/english/explored.ts';
import { sayFamily, sayNoneOf, sayUnsupported } from '../prose/english/supportedClaims.ts';
import { supportedClaims, type ClaimFamily, type SupportedClaim } from '../prose/supportedClaims.ts';
import { capitalised, sentence } from '../prose/words.ts';
import { carriedClaim, claimButtons } from './claimForms.ts';
import type { ClaimGround } from './claimGround.ts';
import { claimsOnFile } from './claimsOnFile.ts';
import { html, type Markup } from './markup.ts';
import type { ShownPart } from './reportPart.ts';
import { weighedClaim } from './weighedClaim.ts';

/** The claims that would stand as supported, each ready to be added: the main measures, and folded what else was measured. */
export function supportedSection(shown: ShownPart, ground: ClaimGround): Markup {
  const { findings } = ground.telling;
  const families = supportedClaims(ground);
  const made = claimsMade(shown, ground);
  const main = families.filter(({ role }) => role === 'primary');
  const others = families.filter(({ role }) => role !== 'primary');
  const some = others.filter(({ claims }) => claims.length > 0);
  const none = others.filter(({ claims }) => claims.length === 0);
  const count = some.reduce((sum, { claims }) => sum + claims.length, 0);
  const without = findings.metrics.filter(({ id }) =>
    main.some(({ about, claims }) => about === id && claims.length === 0),
  );
  return html`<section aria-labelledby="supported">
    <h2 id="supported">What the shots support</h2>
    ${main.filter(({ claims }) => claims.length > 0).map((family) => familyList(family, shown, ground, made))}
    ${without.map((metric) => html`<p class="note">${sayUnsupported(metric, ground)}</p>`)}
    ${
      some.length === 0
        ? ''
        : html`<details>
            <summary>Claims about other measures (${count})</summary>
            <p class="note">${sayExplored(findings.explored)}</p>
            ${some.map((family) => familyList(family, shown, ground, made))}
          </details>`
    }
    ${none.length === 0 ? '' : html`<p class="note">${sayNoneOf(none)}</p>`}
  </section>`;
}

/** A comparison in one word, to know it by. */
const comparedKey = ({ metric, direction, of, than }: SupportedClaim['claim']): string =>
  [metric, direction, of, than].join(' ');

/** The comparisons of which the report claims something that stands. */
function claimsMade({ report }: ShownPart, ground: ClaimGround): ReadonlySet<string> {
  return new Set(
    claimsOnFile(report).flatMap((typed) => {
      const weighed = weighedClaim(typed, ground);
      const stands = weighed.kind === 'judged' && weighed.statement.claim.standing === 'borne-out';
      return stands ? [comparedKey(weighed.claim)] : [];
    }),
  );
}

function familyList(
  family: ClaimFamily,
  shown: ShownPart,
  { telling }: ClaimGround,
  made: ReadonlySet<string>,
): Markup {
  return html`<h3>${capitalised(sayFamily(family))}</h3>
    <ul class="claims">
      ${family.claims.map(({ claim, statement }, index) => {
        const id = `supported-${family.about}-${index + 1}`;
        return html`<li>
          <p class="claim" id="${id}">${sentence(claim.say)}</p>
          <p class="help">${saySupport(statement, telling)}</p>
          ${
            made.has(comparedKey(claim))
              ? html`<p class="help">Your report says so already.</p>`
              : claimButtons(shown, id, carriedClaim(claim), [{ ask: 'add', words: 'Add this claim' }])
          }
        </li>`;
      })}
    </ul>`;
}
