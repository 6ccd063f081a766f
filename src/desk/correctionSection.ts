import { dateInWords } from '../prose/date.ts';
import { sentence } from '../prose/words.ts';
import { entryButton, entryList, type AfterSection } from './afterSection.ts';
import { datedList } from './datedList.ts';
import { entriesIn } from './entriesIn.ts';
import { entryFields } from './entryForm.ts';
import { html, type Markup } from './markup.ts';
import type { ShownPart } from './reportPart.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';

/** What was put right after publication: entered here, and told to readers. */
export const correctionSection: AfterSection = {
  id: 'correct',
  heading: 'Correct',
  purpose:
    'Put right what is wrong under “Answers and words”, and say here what it was: a mistake that readers may have ' +
    'seen is not mended in silence. From the next build on it stands in the line under the title, at the end of the ' +
    'report, beside it in the list of reports, and in the feed of corrections.',
  ...datedList({
    key: 'corrections',
    fields: entryFields('corrections', 'correction'),
    standing,
    add: {
      word: 'correct',
      button: 'Add this correction',
      done: 'corrected',
      told: 'The correction is written down. Readers see it after the next build.',
    },
    takeOut: {
      word: 'uncorrect',
      first: (report) => onRecord(report),
      done: 'uncorrected',
      told: 'The correction is taken out.',
      otherwise: 'this correction is on record, and stays.',
    },
  }),
};

/** So many corrections, from the first on, were told to readers. */
const onRecord = ({ record }: ReportAtDesk): number => record?.corrections ?? 0;

function standing({ report, ...form }: ShownPart): Markup | '' {
  const newestFirst = entriesIn(report, 'corrections').toSorted(
    (one, other) => other.says('date').localeCompare(one.says('date')) || other.at - one.at,
  );
  if (newestFirst.length === 0) return '';
  const rows = newestFirst.map(({ at, says }) => {
    const day = dateInWords(says('date'));
    return html`<p>
        <strong>${day}.</strong> ${sentence(says('what'))} It said: ${sentence(says('was'))} It now says:
        ${sentence(says('now'))}
      </p>
      ${at < onRecord(report) ? '' : entryButton('uncorrect', at, `Take out the correction of ${day}`)}`;
  });
  return entryList(form, rows);
}
