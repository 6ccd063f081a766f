import type { AfterSection } from './afterSection.ts';
import { refusedWith } from './reportPart.ts';
import { statusOf } from './reportStatus.ts';
import { soundChange } from './soundChange.ts';

/** How a report that does not stand came to it. */
interface Undone {
  readonly status: ReturnType<typeof statusOf>;
  /** The answer that tells of it. */
  readonly key: string;
  /** The word for taking it back. */
  readonly done: string;
  /** Why nothing is taken back where the report has another status. */
  readonly otherwise: string;
}

/** What the button does that publishes a report again. */
export const publishedAgain =
  ({ status, key, done, otherwise }: Undone): AfterSection['acts'][string] =>
  ({ report }) =>
    statusOf(report) !== status
      ? refusedWith(`Nothing was written: ${otherwise}`)
      : soundChange(report, {
          edits: [
            { path: ['status'], to: 'published' },
            { path: [key], to: null },
          ],
          done,
          publishes: true,
        });
