import { roleHeadings, type ColumnRole } from '../../trade/columnRoles.ts';
import { writtenOut } from '../../trade/headingWords.ts';
import { metrics, type MetricClass, type MetricId } from '../../trade/metrics.ts';
import { isUnreadUnit, unitNamed, unitSpellings } from '../../trade/unitWords.ts';
import type { UnitId } from '../../trade/units.ts';
import { readSignStatement } from './signStatement.ts';
import type { PositiveSide } from './shotFile.ts';

type HeadingMeaning =
  | { readonly kind: 'metric'; readonly metric: MetricId }
  | { readonly kind: 'role'; readonly role: ColumnRole }
  | { readonly kind: 'ambiguous'; readonly metrics: readonly MetricId[] }
  | { readonly kind: 'unknown' };

/** What a heading says: whose column it is, and whatever it states about unit, sign and class. */
export interface Heading {
  readonly text: string;
  readonly meaning: HeadingMeaning;
  readonly unit: UnitId | null;
  /** A unit that is known but not read, as typed. */
  readonly unreadUnit: string | null;
  readonly positive: PositiveSide | 'contradiction' | null;
  readonly class: MetricClass | null;
}

const classWords: Readonly<Record<string, MetricClass>> = {
  measured: 'measured',
  calculated: 'derived',
  calc: 'derived',
  computed: 'derived',
  derived: 'derived',
  modelled: 'modelled',
  modeled: 'modelled',
  model: 'modelled',
  simulated: 'modelled',
  estimated: 'estimated',
  estimate: 'estimated',
  est: 'estimated',
};

/** A phrase without casing, spaces and punctuation: `Ball_Speed`, `ballSpeed` and `BALL SPEED` are one. */
const compact = (phrase: string): string =>
  phrase
    .toLowerCase()
    .replaceAll('#', ' number ')
    .replace(/shot number number/, 'shot number')
    .replace(/[^\p{L}\p{N}]/gu, '');

const metricsByPhrase = new Map<string, MetricId[]>();
for (const { id, headings } of Object.values(metrics)) {
  for (const phrase of headings) {
    const key = compact(phrase);
    metricsByPhrase.set(key, [...(metricsByPhrase.get(key) ?? []), id]);
  }
}

const roleByPhrase = new Map<string, ColumnRole>(
  (Object.keys(roleHeadings) as ColumnRole[]).flatMap((role) =>
    roleHeadings[role].map((phrase) => [compact(phrase), role] as const),
  ),
);

/** What a phrase means as it stands, else with its short words written out: `Launch Ang.` */
function meaningOf(phrase: string): HeadingMeaning {
  const meaning = meaningAsWritten(phrase);
  const whole = meaning.kind === 'unknown' ? writtenOut(phrase) : null;
  return whole === null ? meaning : meaningAsWritten(whole);
}

function meaningAsWritten(phrase: string): HeadingMeaning {
  const key = compact(phrase);
  const found = metricsByPhrase.get(key) ?? [];
  const [only] = found;
  if (only !== undefined) {
    return found.length === 1 ? { kind: 'metric', metric: only } : { kind: 'ambiguous', metrics: found };
  }
  const role = roleByPhrase.get(key);
  return role === undefined ? { kind: 'unknown' } : { kind: 'role', role };
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');

/** A unit at the end of a heading, after a separator: `Carry yd`, `carry_m`, `Carry in yards`, `Launch angle°`. */
const unitAtEnd = new RegExp(
  `(?:(?:[\\s_,:/|-]|\\sin\\s)+(${unitSpellings.map(escaped).join('|')})|([°º]))\\.?$`,
  'i',
);

/** A remark that left and right follow in the cells: no part of the name. */
const sidesAnnounced = /^(?:l\s*\/\s*r|r\s*\/\s*l|left\s*\/\s*right|l or r|left or right|\+\s*\/\s*-|±)$/i;

/** Splits what stands in brackets into what is understood and what belongs to the name. */
function readBracket(content: string): Omit<Heading, 'text' | 'meaning'> & { readonly rest: string } {
  let unit: UnitId | null = null;
  let unreadUnit: string | null = null;
  let readClass: MetricClass | null = null;
  const sign = readSignStatement(content);
  const rest: string[] = [];
  for (const part of sign.rest.split(/[,;|]/)) {
    const word = part
      .trim()
      .replace(/^in\s+/i, '')
      .replace(/(\S)\s+(?:l\/r|r\/l|left\/right)$/i, '$1');
    const key = word.toLowerCase().replace(/\.$/, '');
    const named = unitNamed(word);
    if (word === '' || word === '#' || sidesAnnounced.test(word)) continue;
    if (named !== null) unit = named;
    else if (isUnreadUnit(word)) unreadUnit = word;
    else if (Object.hasOwn(classWords, key)) readClass = classWords[key] ?? null;
    else rest.push(word);
  }
  return { unit, unreadUnit, positive: sign.positive, class: readClass, rest: rest.join(' ') };
}

/** Reads one heading. Names are matched as whole phrases: `Target Carry` is not `Carry`. */
export function readHeading(cell: string): Heading {
  const text = cell.replace(/\s+/g, ' ').trim();
  let unit: UnitId | null = null;
  let unreadUnit: string | null = null;
  let positive: Heading['positive'] = null;
  let readClass: MetricClass | null = null;
  let name = text.slice(0, 200).replace(/[([{]([^()[\]{}]*)[)\]}]/g, (_, content: string) => {
    const bracket = readBracket(content);
    unit ??= bracket.unit;
    unreadUnit ??= bracket.unreadUnit;
    positive ??= bracket.positive;
    readClass ??= bracket.class;
    return ` ${bracket.rest} `;
  });
  const sign = readSignStatement(name);
  positive ??= sign.positive;
  name = sign.rest
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/(\S)\s(?:l\/r|r\/l|left\/right)$/i, '$1');

  const spread = name.replace(/([a-z])([A-Z])/g, '$1 $2');
  let meaning = meaningOf(name);
  if (meaning.kind === 'unknown' && unit === null && unreadUnit === null) {
    const ending = [name, spread].map((each) => unitAtEnd.exec(each)).find((match) => match !== null) ?? null;
    const word = ending?.[1] ?? ending?.[2];
    if (ending !== null && word !== undefined) {
      const shorter = meaningOf(ending.input.slice(0, ending.index));
      if (shorter.kind !== 'unknown') {
        meaning = shorter;
        unit = unitNamed(word);
        if (unit === null) unreadUnit = word;
      }
    }
  }
  return { text, meaning, unit, unreadUnit, positive, class: readClass };
}
