import { splitReport } from '../intake/authored/frontMatter.ts';
import { readYaml } from '../intake/authored/yamlText.ts';
import { openAnswers } from '../intake/draft/openAnswers.ts';
import type { Problem } from '../problems/problem.ts';
import { composedNames } from '../site/composedNames.ts';
import { openContentFolder } from '../site/contentFiles.ts';
import { unansweredProblems } from './unansweredProblems.ts';
import { unitKeys } from './unitKeys.ts';
import { readShared } from '../site/sharedFiles.ts';
import type { SiteContent } from '../site/siteContent.ts';

/** One report in the list of the desk. */
export interface ReportRow {
  readonly slug: string;
  readonly title: string;
  /** As typed; empty where there is none. */
  readonly date: string;
  readonly status: string;
  /** How many answers must be given and are not. */
  readonly open: number;
  /** Problems beyond open answers. */
  readonly errors: number;
  readonly warnings: number;
}

/** All reports of a content folder: what is at work first, then the newest. */
export function reportRows(root: string, { reports, blocked }: SiteContent): readonly ReportRow[] {
  const folder = composedNames(openContentFolder(root));
  const { shared } = readShared(folder);
  const rows = [
    ...reports.map(({ source: { slug }, problems }) => ({ slug, problems })),
    ...blocked.map(({ slug, problems }) => ({ slug, problems })),
  ].map(({ slug, problems: all }): ReportRow => {
    const file = `reports/${slug}/report.md`;
    const text = folder.text(file).content ?? '';
    const { yaml } = splitReport(file, text);
    const tree = yaml === null ? null : readYaml(file, yaml).tree;
    const problems = unansweredProblems(all, { slug, tree });
    const said = (key: string): string => (typeof tree?.[key] === 'string' ? tree[key].trim() : '');
    const open = new Set(
      openAnswers(file, text, shared)
        .filter(({ must }) => must)
        .map(({ key }) => key),
    );
    return {
      slug,
      title: said('title') || slug,
      date: said('date'),
      status: said('status').toLowerCase(),
      open: open.size,
      errors: count('error', problems, open),
      warnings: count('warning', problems, open),
    };
  });
  return rows.toSorted((a, b) => atWork(b) - atWork(a) || (a.date < b.date ? 1 : a.date > b.date ? -1 : 0));
}

const atWork = ({ status }: ReportRow): number =>
  ['published', 'withdrawn', 'superseded'].includes(status) ? 0 : 1;

const count = (
  severity: Problem['severity'],
  problems: readonly Problem[],
  open: ReadonlySet<string>,
): number =>
  problems.filter(
    (problem) =>
      problem.severity === severity &&
      ![problem.columnName ?? '', ...unitKeys(problem)].some((key) => open.has(key)),
  ).length;
