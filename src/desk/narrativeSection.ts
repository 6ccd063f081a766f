import { capitalised } from '../prose/words.ts';
import type { Offered, Problem } from '../problems/problem.ts';
import { html, type Markup } from './markup.ts';
import { narrativeMenu } from './narrativeMenu.ts';
import { problemText, withoutOffer } from './problemText.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';
import { textArea } from './textArea.ts';

interface NarrativeSection {
  readonly report: ReportAtDesk;
  /** As it was typed, where that is not what the file says. */
  readonly typed: string | null;
  readonly problems: readonly Problem[];
}

/** The narrative, and what it can name: values of the shots with what each prints, and charts. */
export function narrativeSection({ report, typed, problems }: NarrativeSection): Markup {
  const { body, telling, charts } = report;
  const notes = problems.map((problem, index) => ({
    id: `narrative-note-${index}`,
    kind: problem.severity === 'error' ? 'error' : 'warning',
    text: problemText(withoutOffer(problem)),
    offered: firstOffer(problems, index),
  }));
  const described = ['narrative-help', ...notes.map(({ id }) => id)].join(' ');
  const isWrong = notes.some(({ kind }) => kind === 'error');
  return html`<section aria-labelledby="narrative-heading">
    <h2 id="narrative-heading">What you saw</h2>
    <div class="field">
      <label for="narrative">Two or three paragraphs in your own words</label>
      <p class="help" id="narrative-help">
        An empty line begins a new paragraph. Type no figures: pick them from the list below. In the text each
        stands as words in double braces; the page prints the figure.
      </p>
      ${notes.map(
        ({ id, kind, text, offered }) =>
          html`<div class="${kind}">
            <p id="${id}">${text}</p>
            ${offered === null ? '' : offeredSentence(offered, id)}
          </div>`,
      )}
      ${textArea({
        id: 'narrative',
        name: 'narrative',
        rows: 12,
        text: typed ?? body.text,
        attributes: html`aria-describedby="${described}" ${isWrong ? html`aria-invalid="true"` : ''}`,
      })}
      ${
        typed === null
          ? ''
          : html`<details>
              <summary>What stands in the file now</summary>
              <pre>${body.text}</pre>
            </details>`
      }
    </div>
    ${
      telling === null
        ? html`<p class="note">
            The list of figures and charts appears once the shots can be told: answer the questions above, and
            put right what stands in the way.
          </p>`
        : html`<details class="menu">
            <summary>Figures and charts you can name</summary>
            ${narrativeMenu(telling, charts).map(
              ({ heading, entries }) =>
                html`<h3>${capitalised(heading)}</h3>
                  <ul>
                    ${entries.map(
                      ({ typed: words, prints }) =>
                        html`<li><code data-insert>${words}</code> <span>${prints}</span></li>`,
                    )}
                  </ul>`,
            )}
          </details>`
    }
  </section>`;
}

/** What a problem offers, where none before it offers the same for the same sentence. */
function firstOffer(problems: readonly Problem[], index: number): Offered | null {
  const offered = problems[index]?.offered ?? null;
  const isSame = (other: Offered | undefined): boolean =>
    other?.instead === offered?.instead && other?.text === offered?.text;
  return problems.findIndex((problem) => isSame(problem.offered)) === index ? offered : null;
}

/** The sentence that the shots support, to be taken in the place of the one that stands there. */
const offeredSentence = ({ instead, text, prints }: Offered, note: string): Markup =>
  html`<div class="offered" data-take="${text}" data-instead="${instead}" data-about="${note}-offered">
    <p>The shots support this sentence in its place:</p>
    <p class="claim" id="${note}-offered">${prints}</p>
    ${text === prints ? '' : html`<p>What you type for it: <code>${text}</code></p>`}
  </div>`;
