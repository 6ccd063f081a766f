import { report, session, type Files } from './content.ts';

/** One problem of one mistake: where it is, and words of what to do. */
export interface Told {
  readonly at: string;
  readonly cure: string;
  /** Problems besides, at other places, that the same mistake brings along. */
  readonly besides?: number;
}

/** What a shop does wrong, the files that come of it, and what it is told: null where it is no mistake. */
export type Mistake = readonly [mistake: string, files: Files, told: Told | null];

export const at = (place: string, cure: string, besides = 0): Told => ({ at: place, cure, besides });
export const md = (place: string, cure: string, besides = 0): Told => at(`${report}:${place}`, cure, besides);
export const csv = (place: string, cure: string, besides = 0): Told =>
  at(`${session}:${place}`, cure, besides);
export const fine = null;
