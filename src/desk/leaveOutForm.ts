import { exclusionControls } from './exclusionControls.ts';
import { leaveOutFields, leavingOut } from './leavingOut.ts';
import { html, type Markup } from './markup.ts';
import type { ShownPart } from './reportPart.ts';
import type { ShotsAtDesk } from './shotsAtDesk.ts';
import { shotTable } from './shotTable.ts';
import { wouldLeaveOut } from './wouldLeaveOut.ts';

/** The tables of all shots, and what is asked of those that are ticked in them. */
export function leaveOutForm(shown: ShownPart, shots: ShotsAtDesk, rules: readonly string[]): Markup {
  const { typed, action, hidden } = shown;
  const asked = typed?.['do']?.[0];
  const own = asked === 'leave-out' || asked === 'see-shots' ? typed : null;
  const read = own === null ? null : leavingOut(shots, own);
  const ticked = new Set(own?.['shot'] ?? []);
  return html`<form method="post" action="${action}" class="leave-out">
    ${hidden} ${shots.contenders.map((one, index) => shotTable({ one, index, shots, ticked }))}
    <section aria-labelledby="leave-out">
      <h2 id="leave-out">Leave out the shots that are ticked</h2>
      ${asked === 'see-shots' && read?.kind === 'entries' ? wouldLeaveOut(shown.report, shots, read.entries) : ''}
      ${exclusionControls(leaveOutFields(shots), {
        typed: own,
        problems: read?.kind === 'open' ? read.problems : new Map(),
        rules,
      })}
      <p class="actions">
        <button name="do" value="see-shots" formaction="${action}#leave-out">See what it would change</button>
        <button name="do" value="leave-out">Leave out</button>
      </p>
    </section>
  </form>`;
}
