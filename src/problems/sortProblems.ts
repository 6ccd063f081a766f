import type { Problem } from './problem.ts';

const inOrder = (a: number | null, b: number | null): number => (a ?? 0) - (b ?? 0);
const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Problems by file, then in the order in which a reader meets them: whole file first, then line and column. */
export function sortProblems(problems: readonly Problem[]): Problem[] {
  return problems.toSorted(
    (a, b) =>
      byText(a.file, b.file) ||
      inOrder(a.line, b.line) ||
      inOrder(a.column, b.column) ||
      byText(a.kind, b.kind) ||
      byText(a.columnName ?? '', b.columnName ?? ''),
  );
}

/** The same with all errors before the warnings: what stops a build is read first. */
export function gravestFirst(problems: readonly Problem[]): Problem[] {
  const sorted = sortProblems(problems);
  return (['error', 'warning'] as const).flatMap((severity) =>
    sorted.filter((problem) => problem.severity === severity),
  );
}
