import type { Telling } from '../../../telling.ts';
import { capitalised, counted, countWord } from '../../../words.ts';
import { testedInBrief } from '../../answerHead.ts';
import { namesOf } from '../../names.ts';

/** What a chart itself shows, where it stands without its page. */
export interface ChartFinding {
  /** Each says it whole, true when it is read alone: what was measured, of how many golfers, who is named; shortest first. */
  readonly forms: readonly string[];
  /** Sentences that say more and may follow any of them. */
  readonly further: readonly string[];
}

/** Names beyond these are counted: "any of the six heads". */
const mostNamed = 3;

/** "Heron, Plover or Wren"; of many "any of the six heads", "all six heads", "four of the six heads". */
export function anyOf(ids: readonly string[], telling: Telling, joiner: 'and' | 'or' = 'or'): string {
  if (ids.length <= mostNamed) return namesOf(ids, telling, joiner);
  const [own, all] = [ids.length, telling.findings.contenders.length].map(countWord);
  if (ids.length < telling.findings.contenders.length) return `${own} of the ${all} ${telling.nouns}`;
  return joiner === 'or' ? `any of the ${all} ${telling.nouns}` : `all ${all} ${telling.nouns}`;
}

/** "the three heads": of names that are long. */
export const theseMany = (count: number, { nouns }: Telling): string => `the ${countWord(count)} ${nouns}`;

/** What was varied and how many golfers hit, then a heading that is a whole clause: "Balls, one golfer. No clear ...". */
export const afterTested = (telling: Telling, heading: string): string =>
  `${capitalised(testedInBrief(telling))}. ${heading}.`;

/** The same in one sentence, of a clause that begins small. */
export const inTest = (telling: Telling, clause: string): string =>
  `${capitalised(testedInBrief(telling))}: ${clause}.`;

/** The same with the golfers alone before it, for a clause that says what was varied by its names. */
export const byGolfers = ({ findings: { design } }: Telling, clause: string): string =>
  `${capitalised(counted(design.hitters, 'golfer'))}: ${clause}.`;

/** Clauses one after the other: "rose with Heron; no clear trend with Wren". */
export const clauses = (parts: readonly string[]): string => parts.filter((words) => words !== '').join('; ');
