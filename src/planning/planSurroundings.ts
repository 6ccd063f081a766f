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

/** The same as it lies in a content folder, with what is wrong there. */
export function planSurroundings(
  contentDir: string,
): PlanSurroundings & { readonly problems: readonly Problem[] } {
  const { shop, reports, problems } = readContent(composedNames(openContentFolder(contentDir)));
  return { shop, past: pastSessions(reports), problems };
}
