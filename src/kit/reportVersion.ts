import type { Source } from '../intake/authored/source.ts';

/** The version of a report and its data: one more with each correction. */
export function reportVersion({ front }: Source): string {
  return `1.0.${front.corrections.length}`;
}
