import { idsWithPages } from '../kit/contenderRecords.ts';
import type { Report } from '../kit/report.ts';

/** What the pages of one report say of the others: all that must be known of those to render it. */
export interface Surroundings {
  /** Title of every report by its slug. */
  readonly titles: ReadonlyMap<string, string>;
  /** Ids of contenders that have a page of their own. */
  readonly contenders: ReadonlySet<string>;
}

/**
 * @param reports all that were read
 * @param shown those of them that pages are made of
 */
export function surroundingsOf(reports: readonly Report[], shown: readonly Report[]): Surroundings {
  return {
    titles: new Map(reports.map(({ source }) => [source.slug, source.front.title])),
    contenders: idsWithPages(shown),
  };
}
