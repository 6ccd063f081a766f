import { closest } from 'fastest-levenshtein';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import type { Source } from './authored/source.ts';
import { contenderMatcher } from './contenderNames.ts';
import { clubName, firstRows, yamlText, type PlacedRow } from './placedRows.ts';
import type { Session } from './session.ts';

/** Names of clubs that no contender of the report has, each once. */
export function unknownContenders(rows: readonly PlacedRow[], { front }: Source): readonly Problem[] {
  const contenderOf = contenderMatcher(front.contenders);
  const names = firstRows(rows, ({ row, file }) =>
    !row.warmUp && contenderOf(clubName(row, file)) === null ? clubName(row, file) : null,
  );
  const ids = front.contenders.map(({ id }) => id);
  return names.map(({ name, first, count }) =>
    makeProblem(
      'contender-not-in-report',
      { file: first.file, line: first.row.line, columnName: null },
      {
        expected: `one of the contenders of the report: ${ids.join(', ')}`,
        found: `${name} (${count} ${count === 1 ? 'shot' : 'shots'})`,
        cure:
          `If it is ${closest(name.toLowerCase(), ids)}, add "match: [${yamlText(name)}]" to that contender; ` +
          'else add it to the contenders of the report.',
      },
    ),
  );
}

/** Contenders without a shot. */
export function absentContenders(session: Session, source: Source): readonly Problem[] {
  const present = new Set(session.shots.map(({ contender }) => contender));
  return source.front.contenders
    .filter(({ id }) => !present.has(id))
    .map(({ id, label }) =>
      makeProblem('contender-not-in-csv', source.placeOf(['contenders', id], 'key'), {
        expected: `at least one shot whose club is named ${label} or ${id}`,
        found: 'none',
        cure: `Add "match:" with the name the file uses for ${id}, or take ${id} out of the report.`,
      }),
    );
}
