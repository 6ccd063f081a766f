import { problemKinds } from '../problems/kinds.ts';
import { visible } from '../problems/visible.ts';
import { askingWord } from './answeredWarnings.ts';
import { entriesIn } from './entriesIn.ts';
import { html, type Markup } from './markup.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';

/** The warnings that were answered as read, folded; each can be asked again. */
export function answeredList(report: ReportAtDesk): Markup | '' {
  const entries = entriesIn(report, 'seen');
  if (entries.length === 0) return '';
  return html`<details class="answered">
    <summary>Read, and left as it is: ${entries.length}</summary>
    <ul class="rows">
      ${entries.map(({ at, says }) => {
        const about = says('about');
        const words = `${titleOf(says('warning'))}${about === '' ? '' : `: ${visible(about)}`}`;
        return html`<li>
          <p id="answered-${at}">${words}</p>
          <button type="submit" name="do" value="${askingWord(at)}" aria-describedby="answered-${at}">
            Ask again
          </button>
        </li>`;
      })}
    </ul>
  </details>`;
}

const titleOf = (warning: string): string =>
  Object.entries(problemKinds).find(([kind]) => kind === warning)?.[1].title ?? warning;
