import { openPlan } from '../intake/plan/openPlan.ts';
import { composedNames } from '../site/composedNames.ts';
import { openContentFolder } from '../site/contentFiles.ts';
import { readShared } from '../site/sharedFiles.ts';
import { readYaml } from '../intake/authored/yamlText.ts';
import { splitReport } from '../intake/authored/frontMatter.ts';
import { hasPlanSheet } from './planSheet.ts';

/** A planned test that waits for its session. */
export interface WaitingPlan {
  readonly slug: string;
  readonly title: string;
  /** The day on which it was planned, ISO 8601. */
  readonly date: string;
  readonly hasSheet: boolean;
}

/** The planned tests of a content folder that wait for their sessions, the newest first. */
export function plansAtDesk(contentDir: string): readonly WaitingPlan[] {
  const folder = composedNames(openContentFolder(contentDir));
  const { shared } = readShared(folder);
  const plans = folder.folders('reports').flatMap((slug): WaitingPlan[] => {
    const file = `reports/${slug}/report.md`;
    const { content: text } = folder.text(file);
    const plan = text === null ? null : openPlan(slug, text, shared);
    if (text === null || plan === null) return [];
    const { yaml } = splitReport(file, text);
    const title = yaml === null ? undefined : readYaml(file, yaml).tree?.['title'];
    return [
      {
        slug,
        title: typeof title === 'string' && title.trim() !== '' ? title : slug,
        date: plan.date,
        hasSheet: hasPlanSheet(contentDir, slug),
      },
    ];
  });
  return plans.toSorted((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0));
}
