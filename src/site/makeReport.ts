import { analyse } from '../findings/analyse.ts';
import { analysisInput } from '../findings/inputOf.ts';
import { assembleSession } from '../intake/assembleSession.ts';
import { checkSession } from '../intake/shots/checkSession.ts';
import type { Source } from '../intake/authored/source.ts';
import type { Ledger } from '../intake/ledger.ts';
import { makeFigures, chartQuestions } from '../charts/makeFigures.ts';
import type { Report } from '../kit/report.ts';
import type { Problem } from '../problems/problem.ts';
import { claimProblems } from '../prose/claimProblems.ts';
import { lintNarrative } from '../prose/linter.ts';
import { renderNarrative, type NarrativeSource } from '../prose/narrative.ts';
import type { Telling } from '../prose/telling.ts';
import { tellingOf } from '../prose/tellingOf.ts';
import { changedWithoutCorrection, planStanding } from './ledger.ts';
import type { WrittenReport } from './sources.ts';

/** A report analysed, or null where errors stand in the way; with all its problems either way. */
export interface MadeReport {
  readonly report: Report | null;
  readonly problems: readonly Problem[];
}

/**
 * From what was written and recorded to all that can be shown. Pure: no disk, no clock.
 *
 * @param ledger what the shop has on record, where it keeps a ledger
 */
export function makeReport(written: WrittenReport, ledger: Ledger | null = null): MadeReport {
  const { source, shotFiles } = written;
  if (source === null || hasErrors(written.problems)) {
    // Even then what does not fit together is said, so that one run shows everything.
    const more = source === null ? [] : assembleSession(source, shotFiles).problems;
    return { report: null, problems: [...written.problems, ...more] };
  }
  const { session, problems } = assembleSession(source, shotFiles);
  const checked = hasErrors(problems) ? [] : checkSession(session, { inHitOrder: source.front.rowsInHitOrder });
  const soFar = [...written.problems, ...problems, ...checked];
  if (hasErrors(soFar)) return { report: null, problems: soFar };
  const findings = analyse(analysisInput(source, session, planStanding(source, ledger)), soFar);
  const telling = tellingOf(findings, source);
  const body = { ...source.body, file: written.file };
  const narrative = renderNarrative(body, telling, chartQuestions);
  const said = source.front.status === 'withdrawn' ? [] : saidAndShown(source, body, telling);
  const all = [...soFar, ...narrative.problems, ...said, ...changedWithoutCorrection(source, ledger)];
  if (hasErrors(all)) return { report: null, problems: all };
  const figures = makeFigures(telling, session, source.front.contenders);
  return {
    report: { source, session, findings, telling, narrativeHtml: narrative.html, figures, problems: all },
    problems: all,
  };
}

/** What the shop says beyond what the shots bear; a withdrawn report says nothing any more. */
function saidAndShown(source: Source, body: NarrativeSource, telling: Telling): readonly Problem[] {
  const { front, shop, placeOf } = source;
  return [
    ...claimProblems(front.claims, telling, placeOf),
    ...lintNarrative(body, { telling, front, strict: shop?.strict ?? false }),
  ];
}

function hasErrors(problems: readonly Problem[]): boolean {
  return problems.some(({ severity }) => severity === 'error');
}
