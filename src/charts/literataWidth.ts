import { advanceTable, type Advance } from './advanceTable.ts';
import advances from './literataAdvances.json' with { type: 'json' };

/** How far a text in Literata at weight 600 reaches, without kerning. */
const literataAdvance: Advance = advanceTable(
  advances.runs.map(({ first, semibold }) => ({ first, advances: semibold })),
);

/** Width in px of a line set in Literata at weight 600, without kerning. */
export function literataWidth(text: string, size: number): number {
  return (literataAdvance(text) * size) / 1000;
}
