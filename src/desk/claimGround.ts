import { isRuleFirst } from '../findings/claims.ts';
import { defineSource } from '../intake/authored/source.ts';
import { editReport } from '../intake/edits/editAnswers.ts';
import type { Holding } from '../prose/supportedClaims.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';

/** What a report's claims are held against. */
export interface ClaimGround extends Holding {
  readonly report: ReportAtDesk;
  /** The text of the report without any claim. */
  readonly unclaimed: string;
}

/** Null while questions are open or something is wrong with the session: then nothing can be held against the shots. */
export function claimGround(report: ReportAtDesk): ClaimGround | null {
  const { telling } = report;
  const edited = editReport(report.text, [{ path: ['claims'], to: null }]);
  if (telling === null || 'refused' in edited) return null;
  const { source } = sourceWith(report, edited.text);
  if (source === null) return null;
  const ruleFirst = isRuleFirst(telling.findings.design.plannedInAdvance, source.front.plan);
  return { report, unclaimed: edited.text, telling, ruleFirst };
}

/** A report with another text in its file. */
export const sourceWith = (
  { slug, file, shared }: ReportAtDesk,
  text: string,
): ReturnType<typeof defineSource> => defineSource({ slug, file, text, files: [], ...shared });
