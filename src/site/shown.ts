import type { Report } from '../kit/report.ts';

/** Whether a report appears on the published site; drafts appear in `dev` only. */
export function isShown({ source }: Report): boolean {
  return source.front.status !== 'draft';
}
