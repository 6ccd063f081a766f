import type { Attribution, AttributedPart, Part } from '../flight/attribution.ts';
import type { PartId } from '../flight/attributionPlan.ts';
import { printAt, stepFor } from './numbers.ts';
import { toReader, unitFor, withUnit } from './readerUnits.ts';
import type { Telling } from './telling.ts';
import { capitalised, listed } from './words.ts';

const partNames: Readonly<Record<PartId, string>> = {
  'ball-speed': 'ball speed',
  'club-speed': 'club speed',
  smash: 'ball speed for the same swing',
  'launch-angle': 'launch angle',
  'spin-rate': 'spin',
  direction: 'direction',
};

/** The part's name in running text. */
export function partName(id: PartId): string {
  return partNames[id];
}

type Attributed = Extract<Attribution, { readonly state: 'attributed' }>;

function metresWords(metres: number, { range }: Part, telling: Telling): string {
  const unit = unitFor('carry', telling.system);
  const step = stepFor(unit, toReader((range[1] - range[0]) / 2, 'carry', telling.system));
  return withUnit(printAt(toReader(metres, 'carry', telling.system), step), unit);
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
