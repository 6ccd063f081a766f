import type { Source } from '../intake/authored/source.ts';
import type { Ledger } from '../intake/ledger.ts';
import type { Problem } from '../problems/problem.ts';
import { aliasProblems } from './aliasProblems.ts';
import { dayProblems } from './dayProblems.ts';
import { gonePlanned, gonePublished } from './goneFolders.ts';
import { replacementProblems } from './replacementProblems.ts';
import { sameSessions } from './sameSessions.ts';

/** What a folder of reports is looked at with besides the reports themselves. */
interface Around {
  /** Names of all folders of reports, whether they are looked at or not. */
  readonly folders: readonly string[];
  readonly ledger: Ledger | null;
  /** ISO 8601; null where no clock is asked, and no day is too late. */
  readonly today: string | null;
}

/** What only shows when reports are looked at beside one another, the record and the calendar. */
export function acrossReports(
  sources: readonly Source[],
  { folders, ledger, today }: Around,
): readonly Problem[] {
  return [
    ...sameSessions(sources),
    ...aliasProblems(sources, folders),
    ...replacementProblems(sources, folders),
    ...gonePublished(sources, { folders, ledger }),
    // What a report that cannot be read was called before nobody knows.
    ...(sources.length < folders.length ? [] : gonePlanned(sources, { folders, ledger })),
    ...sources.flatMap((source) => dayProblems(source, today)),
  ];
}
