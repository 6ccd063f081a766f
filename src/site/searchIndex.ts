import type { Report } from '../kit/report.ts';
import { dateInWords } from '../prose/date.ts';
import { findingInRow } from '../prose/english/findingInRow.ts';
import { rowFacts } from '../prose/english/rowFacts.ts';
import type { SearchEntry } from './listSearch.ts';
import { reportKinds } from './reportKinds.ts';
import { inOtherUnits } from './toldTwice.ts';

/** What the search of the lists looks through: every report that is shown, newest first. */
export function searchIndex(
  reports: readonly Report[],
  href: (path: string) => string,
): readonly SearchEntry[] {
  const kinds = reportKinds(reports);
  return reports.map((report) => {
    const { source, findings, session, telling } = report;
    const { front, slug, locale } = source;
    const gone =
      front.status === 'withdrawn'
        ? `Withdrawn ${dateInWords(front.withdrawn?.date ?? front.date, locale)}. ${front.withdrawn?.reason ?? ''}`
        : null;
    const found = [telling, inOtherUnits(telling)].map(
      (one) => [one.system, gone ?? findingInRow(one)] as const,
    );
    const { golfers, shots, day } = rowFacts(source, findings, session.shots.length, telling.system);
    const told = new Map(found);
    return {
      path: href(`/reports/${slug}/`),
      title: front.title,
      finding: { yards: told.get('yards') ?? '', metres: told.get('metres') ?? '' },
      facts: [golfers, shots, day].join(' · '),
      names: [
        ...front.contenders.map(({ label }) => label),
        ...kinds.filter((kind) => kind.reports.includes(report)).map(({ title }) => title),
      ].join(' · '),
    };
  });
}
