import type { Problem } from '../problems/problem.ts';
import type { ReportPartId } from './deskPlaces.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';

/** The answers that are given on a page of their own. */
const keysOfParts: Readonly<Record<ReportPartId, readonly string[]>> = {
  shots: ['exclusions'],
  claims: ['claims'],
  after: ['corrections', 'replies', 'withdrawn', 'superseded_by'],
};

const partIds: readonly ReportPartId[] = ['shots', 'claims', 'after'];

/** The part of the work at which an answer is given, by its dotted key: `claims[2].say`. Null for all others. */
export function partOfKey(key: string): ReportPartId | null {
  const [first] = /^[^.[]*/.exec(key) ?? [];
  return partIds.find((id) => keysOfParts[id].some((own) => own === first)) ?? null;
}

/** The place in a list that a dotted key names behind its first word, from 0: 1 for `claims[2].say`; null for none. */
export function entryOfKey(key: string): number | null {
  const [, counted] = /^[^.[]*\[(\d+)\]/.exec(key) ?? [];
  return counted === undefined ? null : Number(counted) - 1;
}

/** The problems of a report that are put right at one part of the work. */
export function problemsOfPart(
  { problems, file }: Pick<ReportAtDesk, 'problems' | 'file'>,
  part: ReportPartId,
): readonly Problem[] {
  return problems.filter((problem) => problem.file === file && partOfKey(problem.columnName ?? '') === part);
}
