import type { Attribution, Part } from '../flight/attribution.ts';
import type { PartId } from '../flight/attributionPlan.ts';
import { partName as nameOfPart, sayNoSplit, sayPart, sayYards } from './english/yards.ts';
import type { Telling } from './telling.ts';
import { yardsPart } from './yardsSplit.ts';

type Attributed = Extract<Attribution, { readonly state: 'attributed' }>;

/** The part's name in running text. */
export function partName(id: PartId, telling: Pick<Telling, 'noun'> = { noun: '' }): string {
  return nameOfPart(id, telling);
}

/** What a part of `a` minus `b` is worth, in words. */
export function partWords(part: Part, a: string, b: string, telling: Telling): string {
  return sayPart(yardsPart(null, part), [a, b], telling);
}

/** What the account bears, for the caption. */
export function yardsInShort(
  { gap, parts }: Pick<Attributed, 'gap' | 'parts'>,
  a: string,
  b: string,
  calculatedBy: 'monitor' | 'flight-model' | null,
  telling: Telling,
): string {
  const flip = gap.value >= 0 ? 1 : -1;
  const own = parts.map((part) => yardsPart(part.id, part, flip));
  return sayYards(own, flip * gap.value, flip === 1 ? [a, b] : [b, a], calculatedBy, telling);
}

/** Why a difference has no account. */
export function noAccount(attribution: Exclude<Attribution, Attributed>): string {
  return sayNoSplit(attribution);
}
