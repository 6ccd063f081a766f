import type { Report } from './report.ts';

/** Version of a report as published: every correction makes a new one. */
export function reportVersion({ source: { front } }: Pick<Report, 'source'>): string {
  return `1.0.${front.corrections.length}`;
}
