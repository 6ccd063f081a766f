import { actForm, type AfterSection } from './afterSection.ts';
import type { AnswerField } from './answerFields.ts';
import { readDatedEntry } from './datedEntry.ts';
import { placeOfNext } from './entriesIn.ts';
import { entryControls } from './entryForm.ts';
import { html, type Markup } from './markup.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';
import { refusedWith, type ShownPart } from './reportPart.ts';
import { soundChange } from './soundChange.ts';
import { takingOut } from './takingOut.ts';

/** What a button sends, the word for what it then did, and the sentence that tells of it. */
interface Act {
  readonly word: string;
  readonly done: string;
  readonly told: string;
}

/** Entries under one key of the report, each of a day: how they stand, and how one is added and taken out. */
interface DatedList {
  readonly key: string;
  readonly fields: readonly AnswerField[];
  readonly standing: (shown: ShownPart) => Markup | '';
  readonly add: Act & { readonly button: string };
  readonly takeOut: Act & {
    /** The first that may go, from 0. */
    readonly first?: (report: ReportAtDesk) => number;
    /** Why nothing is taken out where there is no such entry, or it stays. */
    readonly otherwise: string;
  };
}

/** What a section is that holds such a list. */
export const datedList = ({
  key,
  fields,
  standing,
  add,
  takeOut,
}: DatedList): Pick<AfterSection, 'keys' | 'forms' | 'acts' | 'done'> => ({
  keys: [key],
  forms: (shown) => {
    const controls = html`${entryControls(fields, shown.typed, { date: shown.today })}`;
    return html`${standing(shown)} ${actForm(shown, { ...add, fields: controls })}`;
  },
  acts: {
    [add.word]: ({ report, submitted, today }) => {
      const read = readDatedEntry(fields, submitted, today);
      if ('sentence' in read) return refusedWith(read.sentence);
      const path = [key, placeOfNext(report, key)];
      return soundChange(report, { edits: [{ path, to: read.entry }], done: add.done });
    },
    [takeOut.word]: takingOut({ ...takeOut, key }),
  },
  done: { [add.done]: add.told, [takeOut.done]: takeOut.told },
});
