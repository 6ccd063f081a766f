import type { Shop } from '../intake/authored/shop.ts';
import type { PastSession } from '../intake/plan/pastSpread.ts';
import type { Problem } from '../problems/problem.ts';
import { composedNames } from '../site/composedNames.ts';
import { openContentFolder } from '../site/contentFiles.ts';
import { readContent } from '../site/contentList.ts';
import { pastSessions } from './pastSessions.ts';

/** What the answers of a plan are weighed by: what the shop has said, and what it has hit. */
export interface PlanSurroundings {
  readonly shop: Shop | null;
  readonly past: readonly PastSession[];
}

/** The same as it lies in a content folder. */
export interface FoundSurroundings extends PlanSurroundings {
  /** What was compared before, by name, the latest first. */
  readonly labels: readonly string[];
  readonly problems: readonly Problem[];
}

export function planSurroundings(contentDir: string): FoundSurroundings {
  const { shop, reports, problems } = readContent(composedNames(openContentFolder(contentDir)));
  const fronts = reports.flatMap(({ source }) => (source === null ? [] : [source.front]));
  const latest = fronts.toSorted((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0));
  const labels = latest.flatMap(({ contenders }) => contenders.map(({ label }) => label));
  return { shop, past: pastSessions(reports), labels: [...new Set(labels)], problems };
}
