import { problemKinds, type ProblemKind } from './kinds.ts';
import type { Offered, Place, Problem, Severity } from './problem.ts';

interface ProblemText {
  readonly expected: string;
  readonly found: string | null;
  readonly cure: string;
  readonly cureAtDesk?: string;
  readonly forReader?: string;
  readonly offered?: Offered | null;
  /** Only where the kind's usual severity does not hold. */
  readonly severity?: Severity;
}

/** Builds a problem of a kind at a place, with the kind's usual severity. */
export function makeProblem(
  kind: ProblemKind,
  place: Partial<Place> & { file: string },
  text: ProblemText,
): Problem {
  return {
    kind,
    severity: text.severity ?? problemKinds[kind].severity,
    file: place.file,
    line: place.line ?? null,
    column: place.column ?? null,
    columnName: place.columnName ?? null,
    expected: text.expected,
    found: text.found,
    cure: text.cure,
    ...(text.cureAtDesk === undefined ? {} : { cureAtDesk: text.cureAtDesk }),
    forReader: text.forReader ?? null,
    ...(text.offered == null ? {} : { offered: text.offered }),
  };
}
