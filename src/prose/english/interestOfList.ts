import type { Front } from '../../intake/authored/front.ts';

/** What the shop has to gain from all that a list of reports compares, in sentences of the shop itself. */
export function interestOfList(fronts: readonly Pick<Front, 'contenders'>[]): string {
  const all = fronts.flatMap(({ contenders }) => contenders);
  const sold = all.filter(({ soldHere }) => soldHere !== 'no').length;
  const much =
    sold === 0 ? 'nothing' : sold === all.length ? 'all' : sold * 2 >= all.length ? 'most' : 'some';
  const what = much === 'most' || much === 'some' ? `${much} of what we tested` : `${much} that we tested`;
  return `We sell ${what}. Each report says beside its answer what we sell, who lent, gave or paid for anything, and who saw it first.`;
}
