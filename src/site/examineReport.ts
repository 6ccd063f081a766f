import { analyse } from '../findings/analyse.ts';
import { checkCarries } from '../findings/carryCheck.ts';
import { hitOrder } from '../findings/hitOrder.ts';
import { analysisInput, statedOrder } from '../findings/inputOf.ts';
import { checkMatters } from '../findings/mattersCheck.ts';
import { checkPlannedOrder, checkRowNumbers, checkShotsCredit } from '../findings/orderCheck.ts';
import { withPlannedRounds } from '../findings/plannedSequence.ts';
import { assembleSession } from '../intake/assembleSession.ts';
import { markedInFile } from '../intake/exclusionsOf.ts';
import { checkHands } from '../intake/handCheck.ts';
import { withModelledColumns } from '../intake/modelledColumns.ts';
import { checkPlannedShots } from '../intake/planChecks.ts';
import type { Session } from '../intake/session.ts';
import { checkSession } from '../intake/shots/checkSession.ts';
import { withDerivedColumns } from '../intake/shots/derivedColumns.ts';
import type { Source } from '../intake/authored/source.ts';
import type { Ledger } from '../intake/ledger.ts';
import { narrativeCharts } from '../charts/narrativeCharts.ts';
import type { Report } from '../kit/report.ts';
import type { Problem } from '../problems/problem.ts';
import { claimProblems } from '../prose/claimProblems.ts';
import { lintAnswers, lintNarrative } from '../prose/linter.ts';
import { narrativeTooLong, renderNarrative, type NarrativeSource } from '../prose/narrative.ts';
import type { Telling } from '../prose/telling.ts';
import { tellingOf } from '../prose/tellingOf.ts';
import { metrics } from '../trade/metrics.ts';
import { changedWithoutCorrection, narrativeChanged } from './ledger.ts';
import { versionNotKept } from './keptVersions.ts';
import { underPresentNames } from './ownLedger.ts';
import { planStanding } from './planStanding.ts';
import type { WrittenReport } from './writtenReport.ts';

/** A report but for its figures. */
export type Examined = Omit<Report, 'key' | 'figures' | 'figuresInOtherUnits' | 'problems'>;

interface Examination {
  /** Null where errors stand in the way. */
  readonly examined: Examined | null;
  readonly problems: readonly Problem[];
}

/**
 * All that can be wrong with a report is known after this, and nothing is drawn yet: drawing takes most of the time.
 * Pure: no disk, no clock.
 *
 * @param ledger what the shop has on record, where it keeps a ledger
 */
export function examineReport(written: WrittenReport, ledger: Ledger | null = null): Examination {
  const { source, shotFiles } = written;
  if (source === null || hasErrors(written.problems)) {
    // Even then what does not fit together is said, so that one run shows everything.
    const more = source === null ? [] : assembleSession(source, shotFiles).problems;
    return { examined: null, problems: [...written.problems, ...more] };
  }
  const { session: assembled, problems } = assembleSession(source, shotFiles);
  const { rowsInHitOrder, plan } = source.front;
  const recorded = rowsInHitOrder ? withPlannedRounds(plan, assembled) : assembled;
  const checked = hasErrors(problems) ? [] : checksOf(source, recorded);
  const session = withModelledColumns(withDerivedColumns(recorded), source.front.conditions);
  const soFar = [
    ...written.problems.filter((problem) => !hasReasons(problem, recorded)),
    ...problems,
    ...checked,
  ];
  if (hasErrors(soFar)) return { examined: null, problems: soFar };
  const own = ledger === null ? null : underPresentNames([source], ledger);
  const findings = analyse(analysisInput(source, session, planStanding(source, session.shots, own)), soFar);
  const telling = tellingOf(findings, source);
  const body = { ...source.body, file: written.file };
  const narrative = renderNarrative(body, telling, narrativeCharts(findings), source.pictures);
  const said = source.front.status === 'withdrawn' ? [] : saidAndShown(source, body, telling);
  const all = [
    ...soFar,
    ...narrative.problems,
    ...said,
    ...changedWithoutCorrection(source, own),
    ...narrativeChanged(source, own),
    ...versionNotKept(source, own),
  ];
  if (hasErrors(all)) return { examined: null, problems: all };
  return {
    examined: { source, session, findings, telling, narrativeHtml: narrative.html },
    problems: all,
  };
}

/** Whether a file was asked for the reasons of its marks, and the report has given all of them. */
function hasReasons({ kind }: Problem, { shots }: Session): boolean {
  return kind === 'shots-marked-excluded' && shots.every(({ excluded }) => excluded?.rule !== markedInFile);
}

/** The session beside itself, the plan and the flight model, as the files have it. */
function checksOf(source: Source, session: Session): readonly Problem[] {
  const { front } = source;
  const carry = front.matters.carry?.value ?? metrics.carry.matters;
  const unplanned = checkPlannedShots(source, session);
  const asPlanned = front.plan?.shotsPerContender !== undefined && unplanned.length === 0;
  const startTold = asPlanned || front.orderSheet !== null || front.plan?.warmUp !== undefined;
  return [
    ...checkSession(session, { inHitOrder: front.rowsInHitOrder, startTold }),
    ...unplanned,
    ...checkHands(source, session),
    ...checkPlannedOrder(source, hitOrder(session, null).kind),
    ...checkRowNumbers(source, session),
    ...checkShotsCredit(
      session,
      hitOrder(session, front.rowsInHitOrder ? null : statedOrder(front.plan?.order ?? '')),
    ),
    ...checkMatters(source),
    ...checkCarries(session, carry, /\bballs?\b/i.test(front.varied)),
  ];
}

/** What the shop says beyond what the shots bear; a withdrawn report says nothing any more. */
function saidAndShown(source: Source, body: NarrativeSource, telling: Telling): readonly Problem[] {
  const { front, shop, placeOf } = source;
  const words = { telling, front, strict: shop?.strict ?? false };
  return [
    ...claimProblems(front.claims, telling, placeOf),
    ...lintAnswers(placeOf, words),
    ...(narrativeTooLong(body) === null ? lintNarrative(body, words) : []),
  ];
}

function hasErrors(problems: readonly Problem[]): boolean {
  return problems.some(({ severity }) => severity === 'error');
}
