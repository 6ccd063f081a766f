import type { Findings } from '../findings/findings.ts';
import type { Source } from '../intake/authored/source.ts';
import { nameInText } from './english/names.ts';
import { golferLabels } from './english/whoHit.ts';
import { nounOf } from './noun.ts';
import type { UnitSystem } from './readerUnits.ts';
import type { Telling } from './telling.ts';

/** How a report's figures are told: the shop's units, the noun of what was varied, the contenders' names. */
export function tellingOf(findings: Findings, { front, shop }: Source): Telling {
  const system: UnitSystem = shop?.defaults.units ?? 'yards';
  const names = new Map(front.contenders.map(({ id, label, short }) => [id, short ?? label]));
  const { one, many } = nounOf(front.varied);
  const inText = new Map(
    front.contenders.map(({ id, label, short, article }) => [id, nameInText(short ?? label, article)]),
  );
  const labelsIn = (own: UnitSystem): ReadonlyMap<string, string> =>
    golferLabels(findings.design.golfers, front.hitters, own);
  const golfers = { yards: labelsIn('yards'), metres: labelsIn('metres') };
  return {
    findings,
    system,
    scalesIn: system,
    noun: one,
    nouns: many,
    nameOf: (id) => names.get(id) ?? id,
    the: (id) => inText.get(id) ?? id,
    golfer: (id, own) => golfers[own].get(id) ?? id,
  };
}
