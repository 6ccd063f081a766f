import { claimStandings, isMeasured } from '../findings/claims.ts';
import type { Claim } from '../intake/authored/claims.ts';
import type { Answer } from '../intake/edits/answerEdit.ts';
import { editReport } from '../intake/edits/editAnswers.ts';
import type { ProblemKind } from '../problems/kinds.ts';
import type { Problem } from '../problems/problem.ts';
import { claimProblems } from '../prose/claimProblems.ts';
import { claimOf, type ClaimStatement } from '../prose/claims.ts';
import { lintAnswers } from '../prose/linter.ts';
import { supportedClaim, type SupportedClaim } from '../prose/supportedClaims.ts';
import { sourceWith, type ClaimGround } from './claimGround.ts';
import { partOfKey } from './partOfKey.ts';

/** A claim as it would stand in the report. */
export type WeighedClaim =
  /** It cannot be understood, or is about something that was not measured. */
  | { readonly kind: 'unread'; readonly problems: readonly Problem[] }
  | {
      readonly kind: 'judged';
      readonly claim: Claim;
      readonly statement: ClaimStatement;
      /** What is wrong with its words; how it stands is no problem of these. */
      readonly problems: readonly Problem[];
      /** The claim of the same comparison that the shots support; null where they support none. */
      readonly fitting: SupportedClaim | null;
    };

/** Problems that say how a claim stands. */
const standings: readonly ProblemKind[] = ['claim-contradicted', 'claim-not-shown'];

export const saysStanding = ({ kind }: Problem): boolean => standings.includes(kind);

/** A claim held against the shots as a build would hold it, by itself. */
export function weighedClaim(answer: Answer, ground: ClaimGround): WeighedClaim {
  const { report, unclaimed, telling, ruleFirst } = ground;
  const edited = editReport(unclaimed, [{ path: ['claims'], to: [answer] }]);
  if ('refused' in edited) return { kind: 'unread', problems: [] };
  const { source, problems } = sourceWith(report, edited.text);
  const ofClaims = (all: readonly Problem[]): readonly Problem[] =>
    all.filter(({ columnName }) => partOfKey(columnName ?? '') === 'claims');
  const [claim] = source?.front.claims ?? [];
  if (source === null || claim === undefined) return { kind: 'unread', problems: ofClaims(problems) };
  const { findings } = telling;
  const claims = claimStandings([claim], findings, ruleFirst);
  const told = { ...telling, findings: { ...findings, claims } };
  const all = [
    ...ofClaims(problems),
    ...claimProblems([claim], told, source.placeOf),
    ...ofClaims(
      lintAnswers(source.placeOf, {
        telling: told,
        front: source.front,
        strict: report.shared.shop?.strict ?? false,
      }),
    ),
  ];
  const [standing] = claims;
  if (standing === undefined || !isMeasured(claim, findings)) return { kind: 'unread', problems: all };
  return {
    kind: 'judged',
    claim,
    statement: claimOf(standing, findings),
    problems: all.filter((problem) => !saysStanding(problem)),
    fitting: supportedClaim(claim, ground),
  };
}
