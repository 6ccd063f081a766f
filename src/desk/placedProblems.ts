import type { Problem } from '../problems/problem.ts';
import { fieldAt } from './answerGroups.ts';
import type { AnswerField } from './answerFields.ts';
import type { ReportPartId } from './deskPlaces.ts';
import { partOfKey } from './partOfKey.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';
import { unitKeys } from './unitKeys.ts';

/** The problems of a report by where they belong on its form. */
export interface PlacedProblems {
  /** By the name of the field. */
  readonly ofFields: ReadonlyMap<string, readonly Problem[]>;
  readonly ofNarrative: readonly Problem[];
  /** Of answers that are given at another part of the work. */
  readonly ofParts: ReadonlyMap<ReportPartId, readonly Problem[]>;
  /** Of the session, or of the file as a whole. */
  readonly ofNone: readonly Problem[];
}

/** What is not answered yet, and stands among the open questions, is no problem by itself. */
export function placedProblems(
  { problems, file, missing, body, tree }: ReportAtDesk,
  fields: readonly AnswerField[],
): PlacedProblems {
  const ofFields = new Map<string, Problem[]>();
  const ofParts = new Map<ReportPartId, Problem[]>();
  const ofNarrative: Problem[] = [];
  const ofNone: Problem[] = [];
  for (const problem of problems) {
    const key = problem.columnName ?? '';
    const isOwn = problem.file === file;
    if (isOwn && isOpenQuestion(problem) && isAsked(key, missing, fields)) continue;
    if (!isOwn && unitKeys(problem).some((unit) => isAsked(unit, missing, fields))) continue;
    const field = isOwn && key !== '' ? fieldAt(fields, key) : null;
    const part = isOwn ? partOfKey(key) : null;
    if (part !== null) ofParts.set(part, [...(ofParts.get(part) ?? []), problem]);
    else if (field !== null) ofFields.set(field.name, [...(ofFields.get(field.name) ?? []), problem]);
    else if (isOwn && tree !== null && (problem.line ?? 0) >= body.firstLine) ofNarrative.push(problem);
    else ofNone.push(problem);
  }
  return { ofFields, ofNarrative, ofParts, ofNone };
}

const isOpenQuestion = ({ kind }: Problem): boolean => kind === 'key-missing' || kind === 'interests-missing';

const isAsked = (key: string, missing: ReadonlySet<string>, fields: readonly AnswerField[]): boolean =>
  missing.has(key) && fields.some(({ name }) => name === key);
