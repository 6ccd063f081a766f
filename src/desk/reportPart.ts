import type { AnswerEdit } from '../intake/edits/answerEdit.ts';
import type { Block } from '../intake/authored/tree.ts';
import type { DeskPlaces, ReportPartId } from './deskPlaces.ts';
import type { Markup } from './markup.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';
import type { Submitted } from './submittedAnswers.ts';

/** What a part is shown with. */
export interface ShownPart {
  readonly report: ReportAtDesk;
  /** What was sent and was not written; null where nothing was. */
  readonly typed: Submitted | null;
  /** Where its forms go. */
  readonly action: string;
  /** What each of its forms sends along. */
  readonly hidden: Markup;
  readonly places: DeskPlaces;
  /** The day where the shop is, ISO 8601. */
  readonly today: string;
  /** The answers of the newest other report; null where there is no other. */
  readonly lastAnswers: () => Block | null;
}

/**
 * What a form of a part asks for: edits of the report's file, a sentence why they cannot be made, or only to be shown
 * the page again with what was typed.
 */
export type PartChange =
  | {
      readonly kind: 'edits';
      readonly edits: readonly AnswerEdit[];
      /** Which sentence of the part tells of it. */
      readonly done: string;
    }
  | { readonly kind: 'refused'; readonly sentence: string }
  | { readonly kind: 'shown' };

/** One part of the work at a report, on a page of its own: its shots, its claims, what comes after publication. */
export interface ReportPart {
  readonly id: ReportPartId;
  readonly heading: string;
  /** Whether the page of the report stands beside it where there is room. */
  readonly besideLivePage: boolean;
  /** The sentences that tell what was done, each under a word for the address. */
  readonly done: Readonly<Record<string, string>>;
  readonly page: (shown: ShownPart) => Markup;
  /** @param today the day where the shop is, ISO 8601 */
  readonly change: (report: ReportAtDesk, submitted: Submitted, today: string) => PartChange;
}

/** A change that is not made, and why. */
export const refusedWith = (sentence: string): PartChange => ({ kind: 'refused', sentence });
