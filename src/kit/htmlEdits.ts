import type { Place } from './htmlTags.ts';

/** Words that take the place of others. */
export interface Edit extends Place {
  readonly words: string;
}

/** The page with all edits made; one inside another goes with it, an insertion before what goes stays. */
export function applyEdits(page: string, edits: readonly Edit[]): string {
  const pieces: string[] = [];
  let at = 0;
  for (const { start, end, words } of edits.toSorted(outermostFirst)) {
    if (start < at) continue;
    pieces.push(page.slice(at, start), words);
    at = end;
  }
  return [...pieces, page.slice(at)].join('');
}

function outermostFirst(x: Edit, y: Edit): number {
  if (x.start !== y.start) return x.start - y.start;
  const inserts = ({ start, end }: Edit): boolean => start === end;
  return Number(inserts(y)) - Number(inserts(x)) || y.end - x.end;
}
