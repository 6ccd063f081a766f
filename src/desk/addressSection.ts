import { olderName } from '../intake/authored/reportName.ts';
import { readWith } from '../intake/authored/readWith.ts';
import { actForm, entryButton, entryList, type AfterSection } from './afterSection.ts';
import type { AnswerField } from './answerFields.ts';
import { placeOfNext } from './entriesIn.ts';
import { entryControls } from './entryForm.ts';
import { html, type Markup } from './markup.ts';
import { nameInAddress } from './nameInAddress.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';
import { refusedWith, type ShownPart } from './reportPart.ts';
import { soundChange } from './soundChange.ts';
import { takingOut } from './takingOut.ts';
import { controlName } from './submittedAnswers.ts';

/** Older addresses of a report, from which readers are led to the present one. */
export const addressSection: AfterSection = {
  id: 'addresses',
  heading: 'Its addresses',
  keys: ['aliases'],
  purpose:
    'Others link to a report by its address, and print it as a QR code. Links to an older address keep working as long ' +
    'as it is listed here.',
  forms: (shown) => html`${older(shown)} ${adding(shown)} ${moving(shown)}`,
  acts: {
    alias: ({ report, submitted }) => {
      const name = nameInAddress(submitted[controlName(olderAddress)]?.[0] ?? '');
      if (name === '') return refusedWith('Nothing was written: type the older address first.');
      const read = readWith(olderName, name);
      if ('troubles' in read)
        return refusedWith(`Nothing was written: ${name} stands in no address of a report.`);
      const path = ['aliases', placeOfNext(report, 'aliases')];
      return soundChange(report, { edits: [{ path, to: read.value }], done: 'alias' });
    },
    unalias: takingOut({ key: 'aliases', done: 'unalias', otherwise: 'there is no such address.' }),
  },
  done: {
    alias: 'The older address leads here after the next build.',
    unalias: 'The older address is taken out: after the next build it leads nowhere.',
    renamed: 'The report has a new address. The older one leads to it after the next build.',
  },
};

const olderAddress: AnswerField = {
  path: ['older-address'],
  name: 'older-address',
  label: 'An older address',
  help: 'As it stands in a link, or only what stands between reports/ and the next slash',
  control: 'text',
  choices: [],
  usual: null,
  required: true,
  typed: [],
};

/** The older addresses of a report, as typed. */
export const aliasesOf = ({ tree }: ReportAtDesk): readonly string[] => {
  const list: unknown = tree?.['aliases'];
  return Array.isArray(list) ? list.map((name) => (typeof name === 'string' ? name : '')) : [];
};

function older({ report, ...form }: ShownPart): Markup {
  const aliases = aliasesOf(report);
  return html`<p>It stands at …/reports/<strong>${report.slug}</strong>/.</p>
    ${
      aliases.length === 0
        ? ''
        : entryList(
            form,
            aliases.map(
              (name, at) =>
                html`<p>…/reports/${name}/</p>
                  ${entryButton('unalias', at, `Take out ${name}`)}`,
            ),
          )
    }`;
}

const adding = ({ action, hidden, typed }: ShownPart): Markup =>
  actForm(
    { action, hidden },
    {
      word: 'alias',
      button: 'Add this older address',
      fields: html`${entryControls([olderAddress], typed)}`,
    },
  );

/** The address that a report is to have. */
export const newAddress: AnswerField = {
  ...olderAddress,
  path: ['new-address'],
  name: 'new-address',
  label: 'Another address for this report',
  help: 'Small letters, digits and hyphens: what is to stand between reports/ and the next slash',
};

const moving = ({ report, hidden, typed, places }: ShownPart): Markup =>
  actForm(
    { action: places.address(report.slug), hidden },
    {
      word: 'move',
      button: 'Give it this address',
      fields: html`${entryControls([newAddress], typed)}`,
    },
  );
