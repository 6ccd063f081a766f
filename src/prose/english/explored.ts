import type { Findings } from '../../findings/findings.ts';
import { countWord } from '../words.ts';

const seen = 'Seen, but not what this test set out to check';

/** What a difference in another measure than the main ones is worth: how many such measures were looked at. */
export function sayExplored({ looked, byChance }: Findings['explored']): string {
  if (looked < 2) return `${seen}.`;
  const expected = Math.round(byChance);
  const few = expected < 1 ? 'fewer than one' : `about ${countWord(expected)}`;
  return `${seen}: of ${countWord(looked)} such measures, ${few} would show a difference by chance.`;
}
