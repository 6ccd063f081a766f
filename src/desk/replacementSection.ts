import { dateInWords } from '../prose/date.ts';
import { actForm, type AfterSection } from './afterSection.ts';
import type { AnswerField } from './answerFields.ts';
import { entryControls } from './entryForm.ts';
import { html } from './markup.ts';
import { publishedAgain } from './publishedAgain.ts';
import { refusedWith } from './reportPart.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';
import { statusOf } from './reportStatus.ts';
import { soundChange } from './soundChange.ts';
import { controlName } from './submittedAnswers.ts';

/** A newer report that takes the place of this one, which stays where it is and says so. */
export const replacementSection: AfterSection = {
  id: 'replace',
  heading: 'Replace',
  keys: ['superseded_by'],
  purpose:
    'For a test that you have made anew. This report stays at its address with all that it shows; its first line says ' +
    'that a newer one has taken its place, and leads there.',
  forms: ({ report, action, hidden, typed }) => {
    const field = choiceOf(report);
    if (field.choices.length === 0)
      return html`<p class="note">There is no other published report that could take its place.</p>`;
    const isReplaced = statusOf(report) === 'superseded';
    return html`${actForm(
      { action, hidden },
      {
        word: 'replace',
        button: isReplaced ? 'Replace it by this one' : 'Replace the report',
        fields: html`${entryControls([field], typed, isReplaced ? { replacement: newer(report) } : {})}`,
      },
    )}
    ${isReplaced ? actForm({ action, hidden }, { word: 'unreplace', button: 'Publish it again' }) : ''}`;
  },
  acts: {
    replace: ({ report, submitted }) => {
      const field = choiceOf(report);
      const chosen = submitted[controlName(field)]?.[0] ?? '';
      if (!field.choices.some(({ value }) => value === chosen))
        return refusedWith('Nothing was written: choose the report that takes its place.');
      return soundChange(report, {
        edits: [
          { path: ['status'], to: 'superseded' },
          { path: ['superseded_by'], to: chosen, after: 'status' },
          { path: ['withdrawn'], to: null },
        ],
        done: 'replaced',
      });
    },
    unreplace: publishedAgain({
      status: 'superseded',
      key: 'superseded_by',
      done: 'unreplaced',
      otherwise: 'this report is not replaced.',
    }),
  },
  done: {
    replaced: 'The report is replaced: after the next build it says so, and leads to the newer one.',
    unreplaced: 'The report is published again: it stands on your site after the next build.',
  },
};

const newer = ({ tree }: ReportAtDesk): string =>
  typeof tree?.['superseded_by'] === 'string' ? tree['superseded_by'].trim() : '';

/** The published reports that can take its place, the newest first. */
function choiceOf(report: ReportAtDesk): AnswerField {
  const published = report
    .others()
    .flatMap(({ source }) => (source?.front.status === 'published' ? [source] : []))
    .toSorted((one, other) => other.front.date.localeCompare(one.front.date));
  return {
    path: ['replacement'],
    name: 'replacement',
    label: 'Which report takes its place?',
    help: null,
    control: 'one-of',
    choices: published.map(({ slug, front, locale }) => ({
      value: slug,
      words: `${front.title}, ${dateInWords(front.date, locale)}`,
    })),
    usual: null,
    required: true,
    typed: [],
  };
}
