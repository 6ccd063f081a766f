import { capitalised } from '../prose/words.ts';
import { dateInWords } from '../prose/date.ts';
import { entryButton, entryList, type AfterSection } from './afterSection.ts';
import type { AnswerField } from './answerFields.ts';
import { datedList } from './datedList.ts';
import { entriesIn } from './entriesIn.ts';
import { entryFields } from './entryForm.ts';
import { html, type Markup } from './markup.ts';
import type { ShownPart } from './reportPart.ts';

const fields: readonly AnswerField[] = entryFields('replies', 'reply').map((field) =>
  field.path.at(-1) === 'text'
    ? { ...field, control: 'lines', help: 'Word for word; an empty line begins a new paragraph' }
    : field,
);

/** What a supplier, or somebody else, answers to a report. */
export const replySection: AfterSection = {
  id: 'reply',
  heading: 'Print a reply',
  purpose:
    'Whoever made, lent or sells what was compared may answer. The reply is printed whole, after the corrections, and ' +
    'the line under the title says that there is one.',
  ...datedList({
    key: 'replies',
    fields,
    standing,
    add: {
      word: 'reply',
      button: 'Add this reply',
      done: 'replied',
      told: 'The reply is written down. Readers see it after the next build.',
    },
    takeOut: {
      word: 'unreply',
      done: 'unreplied',
      told: 'The reply is taken out.',
      otherwise: 'there is no such reply.',
    },
  }),
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
