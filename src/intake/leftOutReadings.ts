import type { Problem } from '../problems/problem.ts';
import type { ProblemKind } from '../problems/kinds.ts';
import { isMetricId } from '../trade/metrics.ts';
import type { Shot } from './session.ts';
import type { ShotFile } from './shots/shotFile.ts';

/** Cells that were misread, and stand in a shot that may as well be left out. */
const misread: readonly ProblemKind[] = ['implausible-value', 'not-a-number'];

/**
 * The files without the misread cells of shots that are left out: raw files are never edited, so leaving the shot out
 * is the cure. The cell counts as no reading, and what was wrong with it is a warning.
 *
 * @param shotsIn the shots of the files, those left out marked as such
 */
export function withoutMisreadCells(
  files: readonly ShotFile[],
  shotsIn: (files: readonly ShotFile[]) => readonly Shot[],
): readonly ShotFile[] {
  if (!files.some(({ problems }) => problems.some(isMisread))) return files;
  const shots = shotsIn(files);
  const leftOut = new Set(
    shots.filter(({ excluded }) => excluded !== null).map(({ place }) => `${place.file}:${place.line}`),
  );
  return files.map((file) => {
    const cured = file.problems.filter(
      (problem) => isMisread(problem) && leftOut.has(`${problem.file}:${problem.line}`),
    );
    return cured.length === 0 ? file : withoutCells(file, cured);
  });
}

/** Whether a problem is a cell that cannot be what was measured; all else of its row can be read. */
export const isMisread = ({ kind, severity }: Problem): boolean =>
  severity === 'error' && misread.includes(kind);

function asWarning({ cureAtDesk: _, ...problem }: Problem): Problem {
  const cure = 'Nothing need be done: the shot is left out, and this cell is not used.';
  return { ...problem, severity: 'warning', cure };
}

function withoutCells(file: ShotFile, cured: readonly Problem[]): ShotFile {
  const metricsUnder = (heading: string | null): readonly string[] =>
    Object.entries(file.columns).flatMap(([id, column]) => (column.heading === heading ? [id] : []));
  return {
    ...file,
    problems: file.problems.map((problem) => (cured.includes(problem) ? asWarning(problem) : problem)),
    rows: file.rows.map((row) => {
      const empty = cured
        .filter(({ line }) => line === row.line)
        .flatMap(({ columnName }) => metricsUnder(columnName))
        .filter(isMetricId);
      return empty.length === 0
        ? row
        : { ...row, values: { ...row.values, ...Object.fromEntries(empty.map((id) => [id, null])) } };
    }),
  };
}
