import { dateInWords } from '../prose/date.ts';
import { cautions } from '../planning/planWords.ts';
import type { DeskPlaces } from './deskPlaces.ts';
import { hiddenFields } from './hiddenFields.ts';
import { html, type Markup } from './markup.ts';
import type { PlacedProblems } from './placedProblems.ts';
import { placingOf } from './planPlacing.ts';
import type { WaitingPlan } from './plansAtDesk.ts';

/** On the first page: the way to a new plan, and the plans that wait for their sessions. */
export function planSection(plans: readonly WaitingPlan[], places: DeskPlaces): Markup {
  return html`<section aria-labelledby="plans">
    <h2 id="plans">Plan a test</h2>
    <p>
      Before anybody hits: see how many shots a difference takes, draw the order, and put on record what will
      be judged.
    </p>
    <p class="actions"><a class="button" href="${places.plan}">Plan a test</a></p>
    ${
      plans.length === 0
        ? ''
        : html`<h3>Waiting to be hit</h3>
            <ul class="rows">
              ${plans.map(
                ({ slug, title, date, hasSheet }) =>
                  html`<li>
                    <a href="${places.report(slug)}#planned">${title}</a>
                    <p>
                      Planned on ${dateInWords(date)}.
                      ${hasSheet ? html`<a href="${places.planSheet(slug)}">The sheet to print</a>.` : ''}
                      <a href="${places.report(slug)}#planned">Drop the session file of this plan here</a>.
                    </p>
                  </li>`,
              )}
            </ul>`
    }
  </section>`;
}

/** On the page of a report that is planned and not hit: what to do next, and the place for its session. */
export function plannedSection(
  { slug, date, hasSheet }: WaitingPlan,
  places: DeskPlaces,
  formToken: string,
): Markup {
  return html`<section aria-labelledby="planned">
    <h2 id="planned">Planned on ${dateInWords(date)}, not hit yet</h2>
    <ol>
      ${
        hasSheet
          ? html`<li>
              <a href="${places.planSheet(slug)}">Open the hitting sheet</a> and print it, on A4 or Letter.
            </li>`
          : ''
      }
      <li>Hit in its order, and tick each shot. ${cautions.join(' ')}</li>
      <li>Drop the session file of this plan here. The other answers can wait until then.</li>
    </ol>
    <form method="post" action="${places.files}" enctype="multipart/form-data" class="drop">
      ${hiddenFields({ formToken })}
      <div class="field">
        <label for="session">The session file of this plan (CSV)</label>
        <input type="file" id="session" name="files" accept=".csv,text/csv" multiple />
      </div>
      ${placingOf(slug, 'session')}
      <p class="actions"><button type="submit">Read the files</button></p>
    </form>
  </section>`;
}

/** The problems of a planned test but for its missing session, which is asked for above them. */
export const exceptSession = ({ ofNone, ...others }: PlacedProblems): PlacedProblems => ({
  ...others,
  ofNone: ofNone.filter(({ kind, columnName }) => kind !== 'key-missing' || columnName !== 'session'),
});
