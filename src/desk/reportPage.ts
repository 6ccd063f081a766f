import { capitalised } from '../prose/words.ts';
import type { Problem } from '../problems/problem.ts';
import { isMisread } from '../intake/leftOutReadings.ts';
import { understoodLines } from '../intake/draft/understoodLines.ts';
import type { AnswerField } from './answerFields.ts';
import { answeredList } from './answeredList.ts';
import { answeringWord, answerTo, canBeAnswered } from './answeredWarnings.ts';
import { fieldsOf, type AnswerGroup } from './answerGroups.ts';
import { controlId } from './control.ts';
import { buildForm } from './buildForm.ts';
import { answerForm, type FormState } from './answerForm.ts';
import { hiddenFields } from './hiddenFields.ts';
import type { DeskPlaces, ReportPartId } from './deskPlaces.ts';
import { html, type Markup } from './markup.ts';
import { narrativeSection } from './narrativeSection.ts';
import type { PlacedProblems } from './placedProblems.ts';
import { exceptSession, plannedSection } from './planSections.ts';
import type { WaitingPlan } from './plansAtDesk.ts';
import { problemHeading } from './problemHeading.ts';
import { problemText, problemTextWithPlace } from './problemText.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';
import { reportFrame } from './reportFrame.ts';
import { reportParts } from './reportParts.ts';
import { statusOf } from './reportStatus.ts';
import type { Told } from './told.ts';

interface ReportPage {
  readonly report: ReportAtDesk;
  readonly groups: readonly AnswerGroup[];
  readonly form: FormState;
  /** The narrative as it was typed, where it is not the file's. */
  readonly narrative: string | null;
  readonly told: readonly Told[];
  /** Where it is a planned test that waits for its session. */
  readonly plan: WaitingPlan | null;
  readonly places: DeskPlaces;
  readonly formToken: string;
}

/** Everything about one report: its questions, its narrative, its state, and the page beside them. */
export function reportPage(page: ReportPage): Markup {
  const { report, groups, form, narrative, told, plan, places, formToken } = page;
  const ways = reportParts.map(({ id, heading }) => ({ id, heading, to: places.part(report.slug, id) }));
  const problems = plan === null ? form.problems : exceptSession(form.problems);
  const understood = plan === null ? understoodSection(report) : '';
  const button = (problem: Problem, about: string): Markup | '' => readButton(report, problem, about);
  const main = html`${plan === null ? '' : plannedSection(plan, places, formToken)}
  ${
    report.tree === null
      ? html`${problemSection(problems, fieldsOf(groups), { ways })} ${misreadSection(report, places)}
          ${understood}
          <p class="notice">
            The answers of this report cannot be read, so they cannot be changed here. Put right in
            <code>${report.file}</code> what is told above, then come back.
          </p>`
      : html`<form method="post" action="${places.report(report.slug)}" class="answers">
          ${hiddenFields({ formToken, seen: report.hash })} ${savesByEnter}
          ${problemSection(problems, fieldsOf(groups), { ways, button })} ${misreadSection(report, places)}
          ${answeredList(report)} ${understood} ${answerForm(groups, form)}
          ${narrativeSection({ report, typed: narrative, problems: form.problems.ofNarrative })}
          ${stateSection(report)}
        </form>`
  }
  ${statusOf(report) === 'published' ? buildForm(places, formToken) : ''}`;
  return reportFrame({ report, part: null, told, besideLivePage: true, places, main });
}

/** The Enter key in a line of text presses the first button of a form: this one, whatever others stand above the text. */
const savesByEnter = html`<button type="submit" class="by-enter" tabindex="-1" aria-hidden="true">
  Save
</button>`;

/** The button by which a warning is left as it is; what is typed in the form is saved along. */
const readButton = (report: ReportAtDesk, problem: Problem, about: string): Markup | '' =>
  canBeAnswered(report, problem)
    ? html`<button
        type="submit"
        name="do"
        value="${answeringWord(answerTo(problem, report.problems))}"
        aria-describedby="${about}"
      >
        I have read this: leave it as it is
      </button>`
    : '';

/** A page on which answers of a report are given, besides that of its questions. */
interface WayToPart {
  readonly id: ReportPartId;
  readonly heading: string;
  readonly to: string;
}

/** What a list of problems has beside them: the pages of other parts, and a button. */
interface ProblemList {
  readonly ways?: readonly WayToPart[];
  readonly button?: (problem: Problem, about: string) => Markup | '';
}

/**
 * Every problem in one list: those of an answer lead to it, those of another part of the work to its page, the others
 * say where they are.
 */
export function problemSection(
  { ofFields, ofNarrative, ofParts, ofNone }: PlacedProblems,
  fields: readonly AnswerField[],
  { ways = [], button = () => '' }: ProblemList = {},
): Markup {
  const all = [...ofNone, ...[...ofFields.values()].flat(), ...[...ofParts.values()].flat(), ...ofNarrative];
  if (all.length === 0) return html``;
  const item = (problem: Problem, words: Markup | string): Markup => {
    const id = `problem-${all.indexOf(problem)}`;
    return html`<li><span id="${id}">${words}</span> ${button(problem, id)}</li>`;
  };
  const leading = (to: string, label: string, problems: readonly Problem[]): readonly Markup[] =>
    problems.map((problem) => item(problem, html`<a href="${to}">${label}</a>: ${problemText(problem)}`));
  const withoutPage = [...ofParts].filter(([part]) => ways.every(({ id }) => id !== part));
  return html`<section aria-labelledby="problems" class="problems">
    <h2 id="problems">${problemHeading(all)}</h2>
    <ul>
      ${[...ofNone, ...withoutPage.flatMap(([, own]) => own)].map((problem) =>
        item(problem, problemTextWithPlace(problem)),
      )}
      ${fields.map((field) => leading(`#${controlId(field)}`, field.label, ofFields.get(field.name) ?? []))}
      ${ways.map(({ id, heading, to }) => leading(to, heading, ofParts.get(id) ?? []))}
      ${leading('#narrative', 'What you saw', ofNarrative)}
    </ul>
  </section>`;
}

/** The cure of a misread cell is on another page. */
function misreadSection({ slug, problems }: ReportAtDesk, places: DeskPlaces): Markup {
  return problems.some(isMisread)
    ? html`<p class="notice misread">
        A reading cannot be what was measured:
        <a href="${places.part(slug, 'shots')}">leave that shot out</a>. The file stays as it was exported.
      </p>`
    : html``;
}

function understoodSection({ understood, body }: ReportAtDesk): Markup {
  const isNew = body.text.trim() === '';
  return html`<details ${isNew ? 'open' : ''} class="understood">
    <summary>What the session says</summary>
    <dl>
      ${understoodLines(understood).map(
        ({ label, text }) =>
          html`<dt>${capitalised(label)}</dt>
            <dd>${text}</dd>`,
      )}
    </dl>
  </details>`;
}

function stateSection(report: ReportAtDesk): Markup {
  const status = statusOf(report);
  return html`<section aria-labelledby="state">
    <h2 id="state">Publish</h2>
    <p>${stateWords(status, report.tree?.['published'])}</p>
    <p class="actions">
      <button type="submit" name="do" value="save">Save</button>
      ${
        status === 'published' || status === 'withdrawn' || status === 'superseded'
          ? ''
          : html`<button type="submit" name="do" value="publish">Save and publish</button>`
      }
    </p>
  </section>`;
}

function stateWords(status: string, published: unknown): string {
  switch (status) {
    case 'published':
      return typeof published === 'string' && published !== ''
        ? `This report was published on ${published}. Whatever you change here is on your site after the next build.`
        : 'This report is published. Whatever you change here is on your site after the next build.';
    case 'withdrawn':
      return 'This report is withdrawn: its page says when and why.';
    case 'superseded':
      return 'This report is replaced by another one: its page says by which.';
    default:
      return 'This report is a draft: nobody but you can see it. Published, it goes into your site with the next build.';
  }
}
