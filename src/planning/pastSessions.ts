import { assembleSession } from '../intake/assembleSession.ts';
import { clubTexts } from '../intake/authored/clubTexts.ts';
import type { PastSession } from '../intake/plan/pastSpread.ts';
import { withDerivedColumns } from '../intake/shots/derivedColumns.ts';
import type { WrittenReport } from '../site/writtenReport.ts';
import { clubKindIn } from '../trade/clubKind.ts';

/** The sessions of a content folder that can be read; invented ones tell nothing about golfers. */
export function pastSessions(reports: readonly WrittenReport[]): readonly PastSession[] {
  return reports.flatMap(({ slug, source, shotFiles, problems }) => {
    if (source === null || source.front.inventedData || hasErrors(problems)) return [];
    const { session, problems: own } = assembleSession(source, shotFiles);
    if (hasErrors(own)) return [];
    const roles = Object.fromEntries(source.front.hitters.map(({ id, role }) => [id, role]));
    return [{ slug, kind: clubKindIn(clubTexts(source.front)), roles, session: withDerivedColumns(session) }];
  });
}

const hasErrors = (problems: WrittenReport['problems']): boolean =>
  problems.some(({ severity }) => severity === 'error');
