import type { Report } from './collector.ts';
import { nameText } from './names.ts';
import type { ShotRow } from './shotFile.ts';
import { isSummaryWord } from './summaryWords.ts';

/**
 * Warns of a club named like a row of averages that has far fewer shots than the others: a club may be called "Max",
 * so its rows stay shots until the fitter says otherwise.
 */
export function reportClubsLikeSummaries(shots: readonly ShotRow[], report: Report): void {
  const clubs = [...Map.groupBy(shots, ({ club }) => nameText(club ?? '').toLowerCase()).values()].flatMap(
    (rows) => {
      const [first] = rows;
      return first?.club == null ? [] : [{ name: first.club, line: first.line, shots: rows.length }];
    },
  );
  const most = Math.max(0, ...clubs.filter(({ name }) => !isSummaryWord(name)).map((club) => club.shots));
  const doubtful = clubs.filter((club) => isSummaryWord(club.name) && 3 * club.shots <= most);
  const [first] = doubtful;
  if (first === undefined) return;
  report('club-like-summary', {
    line: first.line,
    expected: 'the name of what was hit',
    found: doubtful
      .slice(0, 10)
      .map(({ name, shots: count }) => `${name} (${count} ${count === 1 ? 'row' : 'rows'})`)
      .join(', '),
    cure: 'if these rows sum up shots, export the file without them, or delete them and say so in the report; they count as shots now',
  });
}
