import { capitalised } from '../prose/words.ts';
import { dateInWords } from '../prose/date.ts';
import { datedForm, entryButton, entryList, type AfterSection } from './afterSection.ts';
import type { AnswerField } from './answerFields.ts';
import { addingDated } from './datedEntry.ts';
import { entriesIn } from './entriesIn.ts';
import { entryFields } from './entryForm.ts';
import { html, type Markup } from './markup.ts';
import type { ShownPart } from './reportPart.ts';
import { takingOut } from './takingOut.ts';

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
  forms: (shown) =>
    html`${standing(shown)} ${datedForm(shown, fields, { word: 'reply', button: 'Add this reply' })}`,
  acts: {
    reply: addingDated({ key: 'replies', fields, done: 'replied' }),
    unreply: takingOut({ key: 'replies', done: 'unreplied', otherwise: 'there is no such reply.' }),
  },
  done: {
    replied: 'The reply is written down. Readers see it after the next build.',
    unreplied: 'The reply is taken out.',
  },
};

function standing({ report, ...form }: ShownPart): Markup | '' {
  const replies = entriesIn(report, 'replies');
  if (replies.length === 0) return '';
  const rows = replies.map(({ at, says }) => {
    const whose = `the reply from ${says('from')}, ${dateInWords(says('date'))}`;
    return html`<details>
        <summary>${capitalised(whose)}</summary>
        <pre class="said">${says('text')}</pre>
      </details>
      ${entryButton('unreply', at, `Take out ${whose}`)}`;
  });
  return entryList(form, rows);
}
