import { analyse } from '../findings/analyse.ts';
import { analysisInput } from '../findings/inputOf.ts';
import { assembleSession } from '../intake/assembleSession.ts';
import { makeFigures, chartQuestions } from '../charts/makeFigures.ts';
import type { Report } from '../kit/report.ts';
import type { Problem } from '../problems/problem.ts';
import { renderNarrative } from '../prose/narrative.ts';
import { tellingOf } from '../prose/tellingOf.ts';
import type { WrittenReport } from './sources.ts';

/** A report analysed, or null where errors stand in the way; with all its problems either way. */
export interface MadeReport {
  readonly report: Report | null;
  readonly problems: readonly Problem[];
}

/** From what was written and recorded to all that can be shown. Pure: no disk, no clock. */
export function makeReport(written: WrittenReport): MadeReport {
  const { source, shotFiles } = written;
  if (source === null || hasErrors(written.problems)) {
    // Even then what does not fit together is said, so that one run shows everything.
    const more = source === null ? [] : assembleSession(source, shotFiles).problems;
    return { report: null, problems: [...written.problems, ...more] };
  }
  const { session, problems } = assembleSession(source, shotFiles);
  const soFar = [...written.problems, ...problems];
  if (hasErrors(soFar)) return { report: null, problems: soFar };
  const findings = analyse(analysisInput(source, session), soFar);
  const telling = tellingOf(findings, source);
  const narrative = renderNarrative({ ...source.body, file: written.file }, telling, chartQuestions);
  const all = [...soFar, ...narrative.problems];
  if (hasErrors(all)) return { report: null, problems: all };
  const figures = makeFigures(telling, session);
  return {
    report: { source, session, findings, telling, narrativeHtml: narrative.html, figures, problems: all },
    problems: all,
  };
}

function hasErrors(problems: readonly Problem[]): boolean {
  return problems.some(({ severity }) => severity === 'error');
}
