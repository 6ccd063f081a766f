import { slugOf } from '../intake/draft/slugOf.ts';
import type { Report } from '../kit/report.ts';
import { capitalised } from '../prose/words.ts';
import { clubFamilies, clubFamiliesIn } from '../trade/clubFamilies.ts';

/** Reports of one kind: hit with the same family of club, or comparing the same kind of thing. */
export interface ReportKind {
  /** In its address; stays as long as the word does: `drivers`, `balls`. */
  readonly id: string;
  /** "Drivers", "Balls". */
  readonly title: string;
  readonly by: 'club' | 'compared';
  readonly reports: readonly Report[];
}

/**
 * The kinds that there are among these reports: by club in the order of a bag, then by what was compared in the order
 * of the alphabet. A report may be of several. Reports stay in the order given. One kind alone parts nothing and is none.
 */
export function reportKinds(reports: readonly Report[]): readonly ReportKind[] {
  const kinds = new Map<string, ReportKind>();
  const add = (words: string, by: ReportKind['by'], report: Report): void => {
    const id = slugOf(words);
    if (id === '') return;
    const known = kinds.get(id) ?? { id, title: capitalised(words), by, reports: [] };
    if (!known.reports.includes(report)) kinds.set(id, { ...known, reports: [...known.reports, report] });
  };
  for (const report of reports) for (const family of clubsOf(report)) add(family, 'club', report);
  for (const report of reports) add(report.telling.nouns.toLowerCase(), 'compared', report);
  const place = ({ id }: ReportKind): number => clubFamilies.findIndex((family) => slugOf(family) === id);
  const all = [...kinds.values()].map((kind) => ({
    ...kind,
    reports: reports.filter((report) => kind.reports.includes(report)),
  }));
  if (all.length < 2) return [];
  return [
    ...all.filter(({ by }) => by === 'club').toSorted((x, y) => place(x) - place(y)),
    ...all.filter(({ by }) => by === 'compared').toSorted((x, y) => (x.id < y.id ? -1 : 1)),
  ];
}

/** What was hit, by the words of its build; only where these name no club by those of the question. */
function clubsOf({ source: { front } }: Report): ReturnType<typeof clubFamiliesIn> {
  const { title, question, varied, held, contenders } = front;
  const built = clubFamiliesIn([
    title,
    varied,
    JSON.stringify({ ...held, notes: '' }),
    ...contenders.flatMap(({ label, build }) => [label, JSON.stringify({ ...build, notes: '' })]),
  ]);
  return built.length > 0 ? built : clubFamiliesIn([question]);
}
