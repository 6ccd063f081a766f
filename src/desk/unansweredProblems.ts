import { seen } from '../intake/authored/seen.ts';
import { readWith } from '../intake/authored/readWith.ts';
import type { Block } from '../intake/authored/tree.ts';
import type { Problem } from '../problems/problem.ts';
import { isMeant } from '../site/seenWarnings.ts';

/**
 * The problems of a report without the warnings that its file says were read, also while something else in that file
 * cannot be used.
 */
export function unansweredProblems(
  problems: readonly Problem[],
  { slug, tree }: { readonly slug: string; readonly tree: Block | null },
): readonly Problem[] {
  const list: unknown = tree?.['seen'];
  const entries = (Array.isArray(list) ? list : []).flatMap((entry: unknown) => {
    const read = readWith(seen, [entry]);
    return 'value' in read ? read.value : [];
  });
  return problems.filter(
    (problem) => !(isOf(slug, problem) && entries.some((entry) => isMeant(entry, problem))),
  );
}

/** Whether a problem lies in a report's own files. */
export const isOf = (slug: string, { file }: Problem): boolean => file.startsWith(`reports/${slug}/`);
