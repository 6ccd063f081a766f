import type { Problem } from '../problems/problem.ts';
import type { Source } from './authored/source.ts';
import { applyExclusions } from './exclusionsOf.ts';
import { inHitOrder } from './placedRows.ts';
import { absentContenders, unknownContenders } from './rowContenders.ts';
import { absentHitters, unknownHitters } from './rowHitters.ts';
import type { Session } from './session.ts';
import { joinColumns, missingPrimaries } from './sessionColumns.ts';
import type { ShotFile } from './shots/shotFile.ts';
import { shotsOf } from './shotsOf.ts';

/**
 * Joins the files of a report with what the report says of them: every row gets its contender and hitter, what the
 * report leaves out is marked, and whatever does not fit together is a problem.
 */
export function assembleSession(
  source: Source,
  files: readonly ShotFile[],
): { readonly session: Session; readonly problems: readonly Problem[] } {
  const { front } = source;
  const rows = inHitOrder(files);
  const excluded = applyExclusions(shotsOf(files, front), front.exclusions, (index) =>
    source.placeOf(['exclusions', index]),
  );
  const columns = joinColumns(files, source);
  const session: Session = {
    contenders: front.contenders.map(({ id }) => id),
    hitters: front.hitters.map(({ id }) => id),
    shots: excluded.shots,
    warmUps: rows.filter(({ row }) => row.warmUp).length,
    columns,
  };
  // A file that is not there or cannot be read has no shots to miss: what is wrong with it is said already.
  const readable =
    files.length >= front.session.length &&
    files.every(({ problems }) => problems.every(({ severity }) => severity !== 'error'));
  const missed = readable
    ? [
        ...excluded.problems,
        ...absentContenders(session, source),
        ...absentHitters(session, source),
        ...missingPrimaries(columns, files, source),
      ]
    : [];
  return {
    session,
    problems: [...unknownContenders(rows, source), ...unknownHitters(rows, source), ...missed],
  };
}
