import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import type { Hitter } from './authored/hitter.ts';
import type { Source } from './authored/source.ts';
import { foldedName } from './contenderNames.ts';
import { firstRows, yamlText, type PlacedRow } from './placedRows.ts';
import type { Session } from './session.ts';

/** Who hit, as far as names go. */
export type NamedHitter = Pick<Hitter, 'id' | 'match'>;

/** Finds the hitter that a name in a CSV stands for, a row without one being the only hitter's; null for none. */
export function hitterMatcher(hitters: readonly NamedHitter[]): (name: string | null) => string | null {
  const [only] = hitters;
  const known = new Map(
    hitters.flatMap(({ id, match = [] }) => [id, ...match].map((name) => [foldedName(name), id])),
  );
  return (name) => {
    const found = name === null ? undefined : known.get(foldedName(name));
    if (found !== undefined) return found;
    return hitters.length === 1 && only !== undefined && name === null ? only.id : null;
  };
}

/** Names that no hitter of the report has, each once. */
export function unknownHitters(rows: readonly PlacedRow[], { front }: Source): readonly Problem[] {
  const hitterOf = hitterMatcher(front.hitters);
  const names = firstRows(rows, ({ row }) => (hitterOf(row.hitter) === null ? (row.hitter ?? '') : null));
  const ids = front.hitters.map(({ id }) => id).join(', ');
  return names.map(({ name, first, count }) =>
    makeProblem(
      'hitter-not-in-report',
      { file: first.file, line: first.row.line },
      {
        expected: `one of the hitters of the report: ${ids}`,
        found: name === '' ? `no hitter (${count} shots)` : `${name} (${count} shots)`,
        cure:
          name === ''
            ? 'Give every row its hitter, or name one hitter only in the report.'
            : `Add "match: [${yamlText(name)}]" to the hitter it is, or add that hitter to the report.`,
      },
    ),
  );
}

/** Hitters without a shot. */
export function absentHitters(session: Session, source: Source): readonly Problem[] {
  const present = new Set(session.shots.map(({ hitter }) => hitter));
  return source.front.hitters
    .filter(({ id }) => !present.has(id))
    .map(({ id }) =>
      makeProblem('hitter-not-in-csv', source.placeOf(['hitters', id], 'key'), {
        expected: `at least one shot of hitter ${id}`,
        found: 'none',
        cure: `Add "match:" with the name the file uses for ${id}, or take ${id} out of the report.`,
      }),
    );
}
