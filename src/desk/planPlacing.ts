import { dateInWords } from '../prose/date.ts';
import type { Placing } from './deskWork.ts';
import { choice } from './choice.ts';
import { html, type Markup } from './markup.ts';
import type { WaitingPlan } from './plansAtDesk.ts';
import type { Submitted } from './submittedAnswers.ts';

const planName = 'plan';
const warmUpsName = 'warm-ups';
const asTheyFit = '';
/** No report has a name with a blank in it. */
const ofNone = 'no plan';

/**
 * Asks to which plan session files belong, where plans wait for theirs.
 *
 * @param form sets the ids of one form apart from those of another on the page
 */
export function placingFields(plans: readonly WaitingPlan[], form: string): Markup {
  if (plans.length === 0) return html``;
  const plan = (value: string, words: string, index: number): Markup =>
    choice({
      type: 'radio',
      id: `${form}-plan-${index}`,
      name: planName,
      value,
      checked: value === asTheyFit,
      words,
    });
  return html`<fieldset class="field">
      <legend>Does the session belong to a test that you planned?</legend>
      <div class="choices">
        ${plan(asTheyFit, 'To the one that it fits, if it fits one', 0)}
        ${plans.map(({ slug, title, date }, index) =>
          plan(slug, `To ${title}, planned on ${dateInWords(date)}`, index + 1),
        )}
        ${plan(ofNone, 'To none: it is a test of its own', plans.length + 1)}
      </div>
    </fieldset>
    ${warmUpsField(form)}`;
}

/** The same where the plan is known: what the monitor counted before its first shot. */
export function placingOf(slug: string, form: string): Markup {
  return html`<input type="hidden" name="${planName}" value="${slug}" />${warmUpsField(form)}`;
}

const warmUpsField = (form: string): Markup =>
  html`<details>
    <summary>The monitor counted warm-up swings too</summary>
    <div class="field">
      <label for="${form}-warm-ups">How many swings before the first planned shot?</label>
      <p class="help" id="${form}-warm-ups-help">
        Only where the file does not say what was hit: its first rows are then taken for them.
      </p>
      <input
        type="number"
        id="${form}-warm-ups"
        name="${warmUpsName}"
        value="0"
        min="0"
        max="99"
        aria-describedby="${form}-warm-ups-help"
      />
    </div>
  </details>`;

/** What a form says of where its files belong, or why that cannot be done. */
export function submittedPlacing(
  submitted: Submitted,
): (Placing & { readonly kind: 'placing' }) | { readonly kind: 'refused'; readonly sentence: string } {
  const slug = submitted[planName]?.[0] ?? asTheyFit;
  const typed = submitted[warmUpsName]?.[0]?.trim() ?? '';
  if (!/^\d{0,2}$/.test(typed))
    return { kind: 'refused', sentence: 'Warm-up swings are a whole number up to 99. Nothing was written.' };
  const warmUps = Number(typed);
  if (slug === ofNone && warmUps > 0)
    return {
      kind: 'refused',
      sentence: 'Warm-up swings are counted only for a test that was planned. Nothing was written.',
    };
  return { kind: 'placing', plan: planOf(slug), warmUps };
}

function planOf(slug: string): Placing['plan'] {
  if (slug === asTheyFit) return { kind: 'as-they-fit' };
  return slug === ofNone ? { kind: 'none' } : { kind: 'named', slug };
}
