import { assembleSession } from '../../intake/assembleSession.ts';
import type { Front } from '../../intake/authored/front.ts';
import type { PastSession } from '../../intake/plan/pastSpread.ts';
import { withDerivedColumns } from '../../intake/shots/derivedColumns.ts';
import type { WrittenReport } from '../../site/writtenReport.ts';
import { clubKindIn } from '../../trade/clubKind.ts';

/** The sessions of a content folder that can be read; invented ones tell nothing about golfers. */
export function pastSessions(reports: readonly WrittenReport[]): readonly PastSession[] {
  return reports.flatMap(({ slug, source, shotFiles, problems }) => {
    if (source === null || source.front.inventedData || hasErrors(problems)) return [];
    const { session, problems: own } = assembleSession(source, shotFiles);
    if (hasErrors(own)) return [];
    const roles = Object.fromEntries(source.front.hitters.map(({ id, role }) => [id, role]));
    return [{ slug, kind: clubKindIn(textsOf(source.front)), roles, session: withDerivedColumns(session) }];
  });
}

/** Where a report says which club was hit. */
function textsOf({ title, question, varied, held, contenders }: Front): readonly string[] {
  return [
    title,
    question,
    varied,
    JSON.stringify(held),
    ...contenders.flatMap(({ label, build }) => [label, JSON.stringify(build ?? {})]),
  ];
}

const hasErrors = (problems: WrittenReport['problems']): boolean =>
  problems.some(({ severity }) => severity === 'error');
