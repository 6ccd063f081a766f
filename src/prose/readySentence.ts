import { claimStandings } from '../findings/claims.ts';
import type { MetricFindings } from '../findings/findings.ts';
import type { Claim } from '../intake/authored/claims.ts';
import type { Offered } from '../problems/problem.ts';
import type { MetricId } from '../trade/metrics.ts';
import { primaryMetrics } from './answers.ts';
import { whatTheShotsBear } from './claimSentence.ts';
import { sayClaim } from './english/claims.ts';
import { named } from './linterNames.ts';
import { resolveReference, valueText } from './references.ts';
import type { Telling } from './telling.ts';
import { sentence } from './words.ts';

/** What the shots support in place of a sentence, ready to be taken. */
export interface ReadySentence {
  /** The sentence itself. */
  readonly prints: string;
  /** The reference that prints it in a narrative; null where none does. */
  readonly reference: string | null;
  /** The entry under `claims` that bears it out; null where the shots do not show it. */
  readonly claim: string | null;
}

/** What a comparison is about, as far as its sentence tells. */
interface Compared {
  readonly metric: MetricId;
  readonly direction: Claim['direction'];
  readonly of: string;
  readonly than: string;
}

/** The sentence of a comparison, as the shots have it; null where they hold nothing of it. */
export function readyFor(compared: Compared, telling: Telling): ReadySentence | null {
  const { metric, direction, of, than } = compared;
  const asClaim = (first: string, second: string): Claim => {
    const claim = { metric, direction, of: first, than: second, byAtLeast: null, allowUnproven: false };
    return { ...claim, say: sayClaim({ ...claim, byAtLeast: 0 }, telling) };
  };
  const both = [asClaim(of, than), asClaim(than, of)];
  const standings = claimStandings(both, telling.findings);
  const [own] = standings;
  if (own === undefined) return null;
  const shown = both.find((_, index) => standings[index]?.standing === 'borne-out');
  const bySize = direction === 'more' || direction === 'less';
  const referred = bySize ? referredTo(metric, of, than, telling) : null;
  return {
    prints: referred?.prints ?? sentence(whatTheShotsBear(own, telling)),
    reference: referred?.reference ?? null,
    claim: shown === undefined ? null : claimEntry(shown),
  };
}

function referredTo(
  metric: MetricId,
  of: string,
  than: string,
  telling: Telling,
): { readonly reference: string; readonly prints: string } | null {
  const words = ['answer', metric, of, than];
  const text = valueText(resolveReference(words, telling, []));
  return text === '' ? null : { reference: words.join(' '), prints: sentence(text) };
}

function claimEntry({ say, metric, direction, of, than }: Claim): string {
  const about = direction === 'straighter' ? '' : `metric: ${metric}, `;
  return `- {say: ${JSON.stringify(say)}, ${about}${direction}: ${of}, than: ${than}}`;
}

/**
 * What the shots say of the main measure with those that a sentence names: of two, of one and its nearest rival, or of
 * the two that lead.
 */
export function readyAbout(text: string, telling: Telling): ReadySentence | null {
  const [metric] = primaryMetrics(telling.findings);
  if (metric === undefined) return null;
  const [of, than] = pairMeant(
    named(text, telling).map(({ id }) => id),
    metric,
  );
  if (of === undefined || than === undefined) return null;
  return readyFor(
    { metric: metric.id, direction: metric.better === 'less' ? 'less' : 'more', of, than },
    telling,
  );
}

/** The two that a sentence is about: those it names, then those with the best averages. */
export function pairMeant(
  ids: readonly string[],
  { byContender, better }: Pick<MetricFindings, 'byContender' | 'better'>,
): readonly string[] {
  const worst = better === 'less' ? Infinity : -Infinity;
  const ranked = byContender
    .toSorted((x, y) => ((y.mean ?? worst) - (x.mean ?? worst)) * (better === 'less' ? -1 : 1))
    .map(({ id }) => id);
  return [...new Set([...ids, ...ranked])].slice(0, 2);
}

/**
 * The offer as it can be taken.
 *
 * @param where whether a reference can be written there: only narratives hold any
 * @param instead the sentence in whose place it is taken, as written
 * @param besides what else can be done
 */
export function offerReady(
  { prints, reference }: ReadySentence,
  where: 'narrative' | 'front matter',
  instead: string,
  besides = '',
): Offered {
  const text = where === 'narrative' && reference !== null ? `{{ ${reference} }}` : prints;
  return { instead, text, prints, besides };
}

/** The offer in words. */
export const sayOffered = ({ text, prints }: Offered): string =>
  text === prints
    ? `Ready to take in its place: "${prints}"`
    : `Ready to take in its place: ${text}, which prints "${prints}"`;

/**
 * The same with the claim that would bear it out.
 *
 * @param where whether a reference can be written there: only narratives hold any
 */
export function sayReady(ready: ReadySentence, where: 'narrative' | 'front matter'): string {
  const asClaim =
    ready.claim === null ? '' : ` The shots support it as a claim; write under "claims": ${ready.claim}.`;
  return sayOffered(offerReady(ready, where, '')) + asClaim;
}
