import { isBlock } from '../intake/authored/tree.ts';
import { dateInWords } from '../prose/date.ts';
import { sentence } from '../prose/words.ts';
import { actForm, type AfterSection } from './afterSection.ts';
import { readDatedEntry } from './datedEntry.ts';
import { entryControls, entryFields } from './entryForm.ts';
import { html, type Markup } from './markup.ts';
import { publishedAgain } from './publishedAgain.ts';
import { refusedWith } from './reportPart.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';
import { statusOf } from './reportStatus.ts';
import { soundChange } from './soundChange.ts';
import type { Submitted } from './submittedAnswers.ts';

const fields = entryFields('withdrawn', 'withdrawal');

/** A report that no longer stands: a dated notice with the reason takes its place. */
export const withdrawalSection: AfterSection = {
  id: 'withdraw',
  heading: 'Withdraw',
  keys: ['withdrawn'],
  purpose:
    'For a report that should not have been published, or whose shots cannot be trusted any more. At its address stays ' +
    'a notice with the day and your reason; answers, charts and data go, and pictures that others show from your site ' +
    'become the same notice. The feed of corrections tells of it. What others have copied, you cannot take back.',
  forms: ({ report, action, hidden, typed, today }) =>
    statusOf(report) === 'withdrawn'
      ? html`<p>${withdrawnWords(report)}</p>
          ${actForm({ action, hidden }, { word: 'unwithdraw', button: 'Publish it again' })}`
      : actForm(
          { action, hidden },
          {
            word: 'withdraw',
            button: 'Withdraw the report',
            fields: html`${entryControls(fields, typed, { date: today })} ${sureBox(typed)}`,
          },
        ),
  acts: {
    withdraw: ({ report, submitted, today }) => {
      const read = readDatedEntry(fields, submitted, today);
      if ('sentence' in read) return refusedWith(read.sentence);
      if (submitted['sure']?.includes('yes') !== true)
        return refusedWith('Nothing was written: tick “Yes, withdraw it” if you mean it.');
      return soundChange(report, {
        edits: [
          { path: ['status'], to: 'withdrawn' },
          { path: ['withdrawn'], to: read.entry, after: 'status' },
          { path: ['superseded_by'], to: null },
        ],
        done: 'withdrawn',
      });
    },
    unwithdraw: publishedAgain({
      status: 'withdrawn',
      key: 'withdrawn',
      done: 'unwithdrawn',
      otherwise: 'this report is not withdrawn.',
    }),
  },
  done: {
    withdrawn: 'The report is withdrawn. With the next build the notice takes its place.',
    unwithdrawn: 'The report is published again: it stands on your site after the next build.',
  },
};

function withdrawnWords({ tree }: ReportAtDesk): string {
  const withdrawn = tree?.['withdrawn'];
  const says = (key: string): string =>
    isBlock(withdrawn) && typeof withdrawn[key] === 'string' ? withdrawn[key].trim() : '';
  return `Withdrawn ${dateInWords(says('date'))}. ${sentence(says('reason'))}`.trim();
}

/** Without script there is no second question, so the answer to it is ticked first. */
const sureBox = (typed: Submitted | null): Markup =>
  html`<div class="field">
    <label class="choice" for="sure"
      ><input
        type="checkbox"
        id="sure"
        name="sure"
        value="yes"
        ${typed?.['sure']?.includes('yes') === true ? 'checked' : ''}
      />Yes, withdraw it</label
    >
  </div>`;
