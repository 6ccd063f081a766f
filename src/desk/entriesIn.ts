import { isBlock } from '../intake/authored/tree.ts';
import type { AnswerEdit } from '../intake/edits/answerEdit.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';

/** An entry of a list of answers, as typed. */
interface Entry {
  /** Its place in the list, from 0. */
  readonly at: number;
  /** What stands under one of its keys; empty where nothing does. */
  readonly says: (key: string) => string;
}

/** The entries of a list under a key of the report; what is no list has none. */
export function entriesIn({ tree }: ReportAtDesk, key: string): readonly Entry[] {
  const list = tree?.[key];
  if (!Array.isArray(list)) return [];
  return list.map((entry: unknown, at) => ({
    at,
    says: (own) => {
      const text = isBlock(entry) ? entry[own] : undefined;
      return typeof text === 'string' ? text.trim() : '';
    },
  }));
}

/** An edit that takes one entry out, and with the last one the key. */
export const withoutEntry = (report: ReportAtDesk, key: string, at: number): AnswerEdit => {
  const list = report.tree?.[key];
  const isOnly = Array.isArray(list) && list.length === 1;
  return { path: isOnly ? [key] : [key, at], to: null };
};

/** The place of a further entry; a list that is not there yet begins with it. */
export const placeOfNext = (report: ReportAtDesk, key: string): number => {
  const list = report.tree?.[key];
  return Array.isArray(list) ? list.length : 0;
};
