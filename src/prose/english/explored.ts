import type { Findings } from '../../findings/findings.ts';
import { countWord } from '../words.ts';

const seen = 'Seen, but not what this test set out to check';

/** What a difference in another measure than the main ones is worth: how many such measures were looked at. */
export function sayExplored({ looked, byChance }: Findings['explored']): string {
  return looked < 2
    ? `${seen}.`
    : `${seen}: of ${countWord(looked)} such measures, ${few(byChance)} would show a difference by chance.`;
}

/** The same within somebody else's sentence: "one of 18 measures looked at; about one of them shows such a difference by chance". */
export function exploredAside({ looked, byChance }: Findings['explored']): string | null {
  return looked < 2
    ? null
    : `one of ${countWord(looked)} measures looked at; ${few(byChance)} of them shows such a difference by chance`;
}

function few(byChance: number): string {
  const expected = Math.round(byChance);
  return expected < 1 ? 'fewer than one' : `about ${countWord(expected)}`;
}
