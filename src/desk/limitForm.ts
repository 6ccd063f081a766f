import { exclusionControls } from './exclusionControls.ts';
import { limitAsked, limitFields } from './limitAsked.ts';
import { html, type Markup } from './markup.ts';
import type { ShownPart } from './reportPart.ts';
import type { ShotsAtDesk } from './shotsAtDesk.ts';
import { wouldLeaveOut } from './wouldLeaveOut.ts';

/** A limit in one measure beyond which every shot is left out, whatever was hit. */
export function limitForm(shown: ShownPart, shots: ShotsAtDesk, rules: readonly string[]): Markup {
  const { typed, action, hidden } = shown;
  const asked = typed?.['do']?.[0];
  const own = asked === 'set-limit' || asked === 'see-limit' ? typed : null;
  const read = own === null ? null : limitAsked(shots, own);
  return html`<section aria-labelledby="limit">
    <h2 id="limit">A limit for all alike</h2>
    <p>Every shot beyond it is left out, whatever was hit.</p>
    ${asked === 'see-limit' && read?.kind === 'entries' ? wouldLeaveOut(shown.report, shots, read.entries) : ''}
    <form method="post" action="${action}" class="limit">
      ${hidden}
      ${exclusionControls(limitFields(shots), {
        typed: own,
        problems: read?.kind === 'open' ? read.problems : new Map(),
        rules,
      })}
      <p class="actions">
        <button name="do" value="see-limit" formaction="${action}#limit">See what it would leave out</button>
        <button name="do" value="set-limit">Set this limit</button>
      </p>
    </form>
  </section>`;
}
