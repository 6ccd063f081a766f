import type { ProblemKind } from '../problems/kinds.ts';

const onRecord = 'put it on record: the button stands at the end of the first page of the desk';

/** What to do about a problem on the desk, where its own words name a command or a line of the file. */
export const deskCures: Partial<Record<ProblemKind, string>> = {
  'changed-without-correction': `Say under “After publication” what was corrected, then ${onRecord}.`,
  'narrative-changed':
    `If it says something else now, say so under “After publication”. Then, or if only the wording was mended, ` +
    `${onRecord}.`,
  'version-not-kept': `Before the next build ${onRecord}. The version of before is kept with it.`,
  'replacement-missing':
    'Choose under “After publication” the report that takes its place, or publish this one again.',
  'alias-taken':
    'Take it out under “After publication”, here or there: one address can lead to one report only.',
};
