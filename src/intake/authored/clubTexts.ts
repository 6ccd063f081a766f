import type { Front } from './front.ts';

/** Where a report says which club was hit. */
export function clubTexts({
  title,
  question,
  varied,
  held,
  contenders,
}: Pick<Front, 'title' | 'question' | 'varied' | 'held' | 'contenders'>): readonly string[] {
  return [
    title,
    question,
    varied,
    JSON.stringify(held),
    ...contenders.flatMap(({ label, build }) => [label, JSON.stringify(build ?? {})]),
  ];
}
