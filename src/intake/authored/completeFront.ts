import type { MetricId } from '../../trade/metrics.ts';
import type { Keyed } from './collections.ts';
import type { Contender } from './contender.ts';
import type { Front, FrontAnswers } from './front.ts';
import { completeInterests } from './interests.ts';
import { plainNoun } from './plainNoun.ts';
import type { Better } from './primary.ts';
import type { Shared } from './shared.ts';

/**
 * The front matter with build sheets and the shop's defaults filled in; null while a build sheet is unusable
 * (its own file says why) or a question about money is open.
 */
export function completeFront(
  answers: FrontAnswers,
  { shop, contenders: sheets }: Shared,
  keysInOrder: (key: string) => readonly string[],
): Front | null {
  const contenders = contendersOf(answers.contenders, sheets, keysInOrder('contenders'));
  const interests = completeInterests(answers.interests ?? {}, shop);
  if (contenders === null || interests === null) return null;
  const hitters = inOrder(answers.hitters, keysInOrder('hitters')).map(([id, hitter]) => ({ id, ...hitter }));
  return {
    ...answers,
    varied: plainNoun(answers.varied),
    contenders,
    interests,
    hitters,
    published: answers.published ?? null,
    summary: answers.summary ?? null,
    withdrawn: answers.withdrawn ?? null,
    supersededBy: answers.supersededBy ?? null,
    aliases: answers.aliases ?? [],
    inventedData: answers.inventedData ?? false,
    held: answers.held ?? {},
    plan: answers.plan ?? null,
    rowsInHitOrder: answers.rows === undefined,
    orderSheet: answers.orderSheet ?? null,
    columns: answers.columns ?? {},
    modelled: answers.modelled ?? [],
    exclusions: answers.exclusions ?? [],
    claims: answers.claims ?? [],
    corrections: answers.corrections ?? [],
    replies: answers.replies ?? [],
    seen: answers.seen ?? [],
    better: betterByMetric(answers.better ?? {}, answers.primary),
    matters: { ...shop?.defaults.matters, ...answers.matters },
    conditions: { ...shop?.defaults.conditions, ...answers.conditions },
  };
}

function contendersOf(
  answers: FrontAnswers['contenders'],
  sheets: Shared['contenders'],
  order: readonly string[],
): readonly Contender[] | null {
  const isEntry = (entry: FrontAnswers['contenders'][number]) => typeof entry !== 'string';
  const named = answers.filter((entry) => typeof entry === 'string').map((id) => sheets.get(id) ?? null);
  if (named.includes(null)) return null;
  const described = inOrder(answers.filter(isEntry), order).map(([id, contender]) => ({ id, ...contender }));
  return [...named.filter((contender) => contender !== null), ...described];
}

/** Entries in the order of the file: an object would put the id `10` before `alder`. */
function inOrder<T>(
  entries: readonly (readonly [string, T])[],
  order: readonly string[],
): (readonly [string, T])[] {
  return entries.toSorted(([a], [b]) => order.indexOf(a) - order.indexOf(b));
}

function betterByMetric(
  better: Better | Keyed<MetricId, Better>,
  primary: readonly MetricId[],
): Keyed<MetricId, Better> {
  if (typeof better !== 'string') return better;
  return Object.fromEntries(primary.map((metric) => [metric, better]));
}
