import type { Figure } from '../charts/figure.ts';
import { makeFigures } from '../charts/makeFigures.ts';
import type { Ledger } from '../intake/ledger.ts';
import type { Report } from '../kit/report.ts';
import type { Problem } from '../problems/problem.ts';
import type { Telling } from '../prose/telling.ts';
import { once } from '../stats/onceEach.ts';
import { examineReport } from './examineReport.ts';
import type { WrittenReport } from './writtenReport.ts';
import { inOtherUnits } from './toldTwice.ts';

/** A report analysed, or null where errors stand in the way; with all its problems either way. */
export interface MadeReport {
  readonly report: Report | null;
  readonly problems: readonly Problem[];
}

/**
 * Makes everything that can be shown out of what was written and recorded. Pure: no disk, no clock.
 *
 * @param ledger what the shop has on record, where it keeps a ledger
 * @param key the report's key, where it is known
 */
export function makeReport(
  written: WrittenReport,
  ledger: Ledger | null = null,
  key: string | null = null,
): MadeReport {
  const { examined, problems } = examineReport(written, ledger);
  if (examined === null) return { report: null, problems };
  const { source, session, telling } = examined;
  const drawn = (told: Telling): readonly Figure[] => makeFigures(told, session, source.front);
  // Most of the time goes into drawing, and who only asks for problems or numbers looks at no figure.
  const figures = once(() => drawn(telling));
  const report: Report = {
    ...examined,
    key,
    get figures() {
      return figures();
    },
    figuresInOtherUnits: once(() => drawn(inOtherUnits(telling))),
    problems,
  };
  return { report, problems };
}
