import { openColumns } from '../intake/draft/openColumns.ts';
import type { Problem } from '../problems/problem.ts';

/** The keys of the units that a problem of a session file leaves open; none where it is of another kind. */
export const unitKeys = (problem: Problem): readonly string[] =>
  problem.severity === 'error'
    ? (openColumns([problem]) ?? []).map(({ metric }) => `columns.${metric}.unit`)
    : [];
