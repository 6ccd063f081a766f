import type { AfterSection } from './afterSection.ts';
import { placeOfNext, withoutEntry } from './entriesIn.ts';
import { refusedWith } from './reportPart.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';
import { soundChange } from './soundChange.ts';

/** A list of the report whose entries can be taken out. */
interface TakingOut {
  readonly key: string;
  /** The first that may go, from 0. */
  readonly first?: (report: ReportAtDesk) => number;
  /** The word for what was done. */
  readonly done: string;
  /** Why nothing is taken out where there is no such entry, or it stays. */
  readonly otherwise: string;
}

/** What the button beside an entry does that takes it out. */
export const takingOut =
  ({ key, first = () => 0, done, otherwise }: TakingOut): AfterSection['acts'][string] =>
  ({ report, entry }) =>
    entry === null || entry < first(report) || entry >= placeOfNext(report, key)
      ? refusedWith(`Nothing was written: ${otherwise}`)
      : soundChange(report, { edits: [withoutEntry(report, key, entry)], done });
