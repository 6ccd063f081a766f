import { isBlock, type Tree } from '../intake/authored/tree.ts';
import type { Answer } from '../intake/edits/answerEdit.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';

/** The claims of a report as they were typed, in their order. */
export function claimsOnFile({ tree }: Pick<ReportAtDesk, 'tree'>): readonly Answer[] {
  const claims = tree?.['claims'];
  return Array.isArray(claims) ? (claims as readonly Tree[]).map(asAnswer) : [];
}

function asAnswer(typed: Tree | undefined): Answer {
  if (typed === null || typed === undefined || typeof typed === 'string') return typed ?? '';
  if (isBlock(typed))
    return Object.fromEntries(Object.entries(typed).map(([key, own]) => [key, asAnswer(own)]));
  return typed.map(asAnswer);
}
