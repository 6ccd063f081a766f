import { capitalised } from '../prose/words.ts';
import { dateInWords } from '../prose/date.ts';
import { actForm, entryButton, type AfterSection } from './afterSection.ts';
import type { AnswerField } from './answerFields.ts';
import { entriesIn, placeOfNext, withoutEntry } from './entriesIn.ts';
import { entryControls, entryFields, readEntry } from './entryForm.ts';
import { html, type Markup } from './markup.ts';
import { notYet } from './notYet.ts';
import { refusedWith } from './reportPart.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';
import { soundChange } from './soundChange.ts';

const fields: readonly AnswerField[] = entryFields('replies', 'reply').map((field) =>
  field.path.at(-1) === 'text'
    ? { ...field, control: 'lines', help: 'Word for word; an empty line begins a new paragraph' }
    : field,
);

/** What a supplier, or somebody else, answers to a report. */
export const replySection: AfterSection = {
  id: 'reply',
  heading: 'Print a reply',
  keys: ['replies'],
  purpose:
    'Whoever made, lent or sells what was compared may answer. The reply is printed whole, after the corrections, and ' +
    'the line under the title says that there is one.',
  forms: ({ report, action, hidden, typed, today }) =>
    html`${standing(report, action, hidden)}
    ${actForm(
      { action, hidden },
      {
        word: 'reply',
        button: 'Add this reply',
        fields: html`${entryControls(fields, typed, { date: today })}`,
      },
    )}`,
  acts: {
    reply: ({ report, submitted, today }) => {
      const read = readEntry(fields, submitted);
      if ('sentence' in read) return refusedWith(read.sentence);
      const early = notYet(read.entry['date'], today);
      if (early !== null) return refusedWith(early);
      const path = ['replies', placeOfNext(report, 'replies')];
      return soundChange(report, { edits: [{ path, to: read.entry }], done: 'replied' });
    },
    unreply: ({ report, entry }) =>
      entry === null || entry >= placeOfNext(report, 'replies')
        ? refusedWith('Nothing was written: there is no such reply.')
        : soundChange(report, { edits: [withoutEntry(report, 'replies', entry)], done: 'unreplied' }),
  },
  done: {
    replied: 'The reply is written down. Readers see it after the next build.',
    unreplied: 'The reply is taken out.',
  },
};

function standing(report: ReportAtDesk, action: string, hidden: Markup): Markup | '' {
  const replies = entriesIn(report, 'replies');
  if (replies.length === 0) return '';
  return html`<form method="post" action="${action}">
    ${hidden}
    <ul class="rows">
      ${replies.map(({ at, says }) => {
        const whose = `the reply from ${says('from')}, ${dateInWords(says('date'))}`;
        return html`<li>
          <details>
            <summary>${capitalised(whose)}</summary>
            <pre class="said">${says('text')}</pre>
          </details>
          ${entryButton('unreply', at, `Take out ${whose}`)}
        </li>`;
      })}
    </ul>
  </form>`;
}
