import type { ReportAtDesk } from './reportAtDesk.ts';

/** The status of a report as typed, in small letters; empty where it has none. */
export const statusOf = ({ tree }: Pick<ReportAtDesk, 'tree'>): string =>
  typeof tree?.['status'] === 'string' ? tree['status'].trim().toLowerCase() : '';
