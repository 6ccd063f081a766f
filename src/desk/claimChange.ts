import { isUnanswered, valueAt } from '../intake/authored/tree.ts';
import type { Claim } from '../intake/authored/claims.ts';
import type { Answer, AnswerEdit } from '../intake/edits/answerEdit.ts';
import { claimAsks, type ClaimAsk } from './claimForms.ts';
import { claimGround, type ClaimGround } from './claimGround.ts';
import { claimsOnFile } from './claimsOnFile.ts';
import { fittingFor, mayBeUnproven } from './readClaim.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';
import { refusedWith, type PartChange } from './reportPart.ts';
import type { Submitted } from './submittedAnswers.ts';
import { claimAnswer, typedClaim } from './typedClaim.ts';
import { weighedClaim, type WeighedClaim } from './weighedClaim.ts';

/** What a button of the claims asks for. */
export function claimChange(report: ReportAtDesk, submitted: Submitted): PartChange {
  const ask = claimAsks.find((word) => word === submitted['do']?.[0]);
  if (ask === undefined) return refusedWith('That button is not known here.');
  if (ask === 'see') return { kind: 'shown' };
  const ground = claimGround(report);
  if (ask === 'add' || ask === 'add-unproven')
    return ground === null ? refusedWith(notYet) : added(ask, report, submitted, ground);
  const index = Number(submitted['claim']?.[0]);
  const typed = claimsOnFile(report)[index];
  if (typed === undefined) return refusedWith('There is no such claim.');
  if (ask === 'out') return { kind: 'edits', edits: [{ path: ['claims', index], to: null }], done: 'out' };
  if (ground === null) return refusedWith(notYet);
  return changed(ask, index, weighedClaim(typed, ground), report);
}

const notYet = 'Nothing was written: questions are still open, so nothing can be held against the shots.';

function added(
  ask: 'add' | 'add-unproven',
  report: ReportAtDesk,
  submitted: Submitted,
  ground: ClaimGround,
): PartChange {
  const answer = claimAnswer(typedClaim(submitted), ask === 'add-unproven');
  if (answer === null) return refusedWith('Nothing was added: something of it is still missing.');
  const why = whyNot(weighedClaim(answer, ground));
  return why === null
    ? { kind: 'edits', edits: [addition(answer, report)], done: 'added' }
    : refusedWith(`Nothing was added: ${why}`);
}

/** Why a claim may not stand as it is; null where it may. */
function whyNot(weighed: WeighedClaim): string | null {
  if (weighed.kind === 'unread' || weighed.problems.some(({ severity }) => severity === 'error'))
    return 'it cannot stand as it is. What is wrong stands below.';
  switch (weighed.statement.claim.standing) {
    case 'borne-out':
      return null;
    case 'contradicted':
      return 'the shots speak against it. What they support stands below.';
    case 'weaker-than-said':
      return 'it says more than the shots support. What they support stands below.';
    case 'not-shown':
      return mayBeUnproven(weighed) ? 'the shots do not show it. What they say stands below.' : null;
  }
}

/** A claim behind the others; the first one where the interests end, as a report is usually written. */
const addition = (answer: Answer, report: ReportAtDesk): AnswerEdit => ({
  path: ['claims', claimsOnFile(report).length],
  to: answer,
  after: 'interests',
});

function changed(
  ask: Extract<ClaimAsk, 'take' | 'unproven'>,
  index: number,
  weighed: WeighedClaim,
  report: ReportAtDesk,
): PartChange {
  if (weighed.kind === 'unread') return refusedWith('Nothing was written: that claim cannot be understood.');
  const at = (key: string, to: string | null): AnswerEdit => ({ path: ['claims', index, key], to });
  if (ask === 'unproven')
    return mayBeUnproven(weighed)
      ? { kind: 'edits', edits: [at('allow_unproven', 'yes')], done: 'unproven' }
      : refusedWith(
          'Nothing was written: the shots say something else of that claim than that they do not show it.',
        );
  const fitting = fittingFor(weighed);
  if (fitting === null) return refusedWith('Nothing was written: the shots support no other sentence.');
  const isWritten = (key: string): boolean => !isUnanswered(valueAt(report.tree, ['claims', index, key]));
  const { say, direction, of, than, byAtLeast }: Claim = fitting.claim;
  return {
    kind: 'edits',
    edits: [
      at('say', say),
      at(direction, of),
      at('than', than),
      ...(byAtLeast !== null || isWritten('by_at_least')
        ? [at('by_at_least', byAtLeast?.typed ?? null)]
        : []),
      ...(isWritten('allow_unproven') ? [at('allow_unproven', null)] : []),
    ],
    done: 'taken',
  };
}
