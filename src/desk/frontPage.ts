import { counted } from '../problems/countProblems.ts';
import { capitalised } from '../prose/words.ts';
import { buildForm } from './buildForm.ts';
import { hiddenFields } from './hiddenFields.ts';
import type { DeskPlaces } from './deskPlaces.ts';
import { choice } from './choice.ts';
import { html, type Markup } from './markup.ts';
import { placingFields } from './planPlacing.ts';
import type { WaitingPlan } from './plansAtDesk.ts';
import { planSection } from './planSections.ts';
import type { ReportRow } from './reportRows.ts';
import { toldSection, type Told } from './told.ts';

interface FrontPage {
  readonly rows: readonly ReportRow[];
  /** Files of the inbox that are no report yet. */
  readonly waiting: readonly string[];
  /** Planned tests whose sessions are to come. */
  readonly plans: readonly WaitingPlan[];
  /** Whether the shop has said who it is. */
  readonly shopIsKnown: boolean;
  readonly told: readonly Told[];
  /** What a command said of files that could not be used, as it said it. */
  readonly said: string | null;
  readonly places: DeskPlaces;
  readonly formToken: string;
}

/** Where everything begins: files in, reports with what each still needs, and the build. */
export function frontPage({
  rows,
  waiting,
  plans,
  shopIsKnown,
  told,
  said,
  places,
  formToken,
}: FrontPage): Markup {
  return html`<h1>Desk</h1>
    ${toldSection(told)} ${said === null ? '' : html`<pre class="said">${said}</pre>`}
    ${
      shopIsKnown
        ? ''
        : html`<p class="notice">
            <a href="${places.shop}">Say who you are first</a>: your name, your address and what you have to
            gain, once for all reports.
          </p>`
    }
    <section aria-labelledby="new">
      <h2 id="new">A new report</h2>
      <form method="post" action="${places.files}" enctype="multipart/form-data" class="drop">
        ${hiddenFields({ formToken })}
        <div class="field">
          <label for="files">Session files (CSV)</label>
          <p class="help" id="files-help">
            Drop them here, or choose them. Files of one session, such as one for each head, go together. They
            are kept as they are and never edited.
          </p>
          <input
            type="file"
            id="files"
            name="files"
            accept=".csv,text/csv"
            multiple
            aria-describedby="files-help"
          />
        </div>
        ${placingFields(plans, 'files')}
        <p class="actions"><button type="submit">Read the files</button></p>
      </form>
      ${waiting.length === 0 ? '' : waitingForm({ waiting, plans, places, formToken })}
    </section>
    ${planSection(plans, places)}
    <section aria-labelledby="reports">
      <h2 id="reports">Reports</h2>
      ${
        rows.length === 0
          ? html`<p>There is none yet.</p>`
          : html`<ul class="rows">
              ${rows.map((row) => reportRow(row, places))}
            </ul>`
      }
    </section>
    <section aria-labelledby="build">
      <h2 id="build">Your site</h2>
      <p>
        A build checks everything and writes the site anew, with all published reports. It takes some seconds.
      </p>
      ${buildForm(places, formToken)}
    </section>
    <section aria-labelledby="record">
      <h2 id="record">On record</h2>
      <p>
        What is planned and published goes on record with its day. Later changes are held against it, also
        those that nobody tells readers of. Before a correction is built, the version that it replaces is
        kept.
      </p>
      <form method="post" action="${places.record}">
        ${hiddenFields({ formToken })}
        <p class="actions"><button type="submit">Put on record</button></p>
      </form>
    </section>`;
}

function waitingForm({
  waiting,
  plans,
  places,
  formToken,
}: Pick<FrontPage, 'waiting' | 'plans' | 'places' | 'formToken'>): Markup {
  return html`<form method="post" action="${places.waiting}">
    ${hiddenFields({ formToken })}
    <fieldset class="field">
      <legend>Waiting in the inbox</legend>
      <p class="help">Tick the files of one session.</p>
      ${waiting.map((name, index) =>
        choice({
          type: 'checkbox',
          id: `waiting-${index}`,
          name: 'names',
          value: name,
          checked: true,
          words: name,
        }),
      )}
    </fieldset>
    ${placingFields(plans, 'waiting')}
    <p class="actions"><button type="submit">Read the ticked files</button></p>
  </form>`;
}

function reportRow(
  { slug, title, date, status, open, errors, warnings }: ReportRow,
  places: DeskPlaces,
): Markup {
  const needs = [
    ...(open === 0 ? [] : [`${counted(open, 'answer')} to give`]),
    ...(errors === 0 ? [] : [`${counted(errors, 'thing')} to put right`]),
    ...(warnings === 0 ? [] : [`${counted(warnings, 'thing')} to know`]),
  ];
  return html`<li>
    <a href="${places.report(slug)}">${title}</a>
    <p>
      <strong>${status === '' ? 'No status' : capitalised(status)}</strong
      >${date === '' ? '' : ` · hit ${date}`} · ${needs.length === 0 ? 'nothing open' : needs.join(' · ')}
    </p>
  </li>`;
}
