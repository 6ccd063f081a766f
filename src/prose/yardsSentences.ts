import type { Attribution, AttributedPart, Part } from '../flight/attribution.ts';
import type { PartId } from '../flight/attributionPlan.ts';
import { printAt, stepFor } from './numbers.ts';
import { toReader, unitFor, withUnit } from './readerUnits.ts';
import type { Telling } from './telling.ts';
import { capitalised, listed } from './words.ts';

const partNames: Readonly<Record<PartId, string>> = {
  'ball-speed': 'ball speed',
  'club-speed': 'club speed',
  smash: 'strike (smash factor)',
  'launch-angle': 'launch angle',
  'spin-rate': 'spin',
  direction: 'direction',
};

/** The part's name in running text. */
export function partName(id: PartId): string {
  return partNames[id];
}

type Attributed = Extract<Attribution, { readonly state: 'attributed' }>;

/** What a part is worth, in words: "Alder 2 to 8 farther would fit", "not settled". */
export function partWords(part: Part, ahead: string, behind: string, telling: Telling): string {
  if (!part.settled) return `not settled; ${rangeWords(part, ahead, behind, telling)}`;
  return `about ${metresWords(Math.abs(part.value), part, telling)} for ${part.value >= 0 ? ahead : behind}; ${rangeWords(part, ahead, behind, telling)}`;
}

function metresWords(metres: number, { range }: Part, telling: Telling): string {
  const unit = unitFor('carry', telling.system);
  const step = stepFor(unit, toReader((range[1] - range[0]) / 2, 'carry', telling.system));
  return withUnit(printAt(toReader(metres, 'carry', telling.system), step), unit);
}

function rangeWords({ range }: Part, ahead: string, behind: string, telling: Telling): string {
  const unit = unitFor('carry', telling.system);
  const read = (value: number): number => toReader(value, 'carry', telling.system);
  const [low, high] = [read(range[0]), read(range[1])];
  const step = stepFor(unit, (high - low) / 2);
  const print = (value: number): string => printAt(Math.abs(value), step);
  if (low >= 0) return `${print(low)} to ${print(high)} for ${ahead} would fit`;
  if (high <= 0) return `${print(high)} to ${print(low)} for ${behind} would fit`;
  return `${print(low)} for ${behind} to ${print(high)} for ${ahead} would fit`;
}

/** What the account bears in one sentence, for the caption. */
export function yardsInShort(
  attribution: Attributed,
  ahead: string,
  behind: string,
  calculatedBy: 'monitor' | 'flight-model' | null,
  telling: Telling,
): string {
  const findings = attribution.parts.filter(({ finding }) => finding);
  const open = attribution.parts.filter(({ settled }) => !settled).map(({ id }) => partNames[id]);
  const how =
    calculatedBy === null
      ? ''
      : `This is how a flight model splits a carry that ${calculatedBy === 'monitor' ? 'the monitor itself' : 'our flight model'} calculated. `;
  const found =
    findings.length === 0
      ? 'No part of the gap is large enough, and sure enough, to name.'
      : `${listed(findings.map((part) => foundWords(part, ahead, behind, telling)))}.`;
  const left = open.length === 0 ? '' : ` Not settled: ${listed(open)}.`;
  return `${how}${capitalised(found)}${left}`;
}

function foundWords(part: AttributedPart, ahead: string, behind: string, telling: Telling): string {
  return `${partNames[part.id]} gives ${part.value >= 0 ? ahead : behind} about ${metresWords(Math.abs(part.value), part, telling)}`;
}

/** Why a gap has no account. */
export function noAccount(attribution: Exclude<Attribution, Attributed>): string {
  switch (attribution.why) {
    case 'too-few-shots':
    case 'too-few-rounds':
      return 'Not drawn: too few shots with a launch to split a gap over.';
    case 'nothing-varied':
      return 'Not drawn: nothing about the launches varied.';
    case 'carry-out-of-reach':
      return 'Not drawn: no flight model fits the carries that were read; conditions or data are unusual.';
  }
}
