import { metricHeadings, roleHeadings } from '../../trade/headings.ts';
import type { MetricId } from '../../trade/metrics.ts';
import { unitNamed } from '../../trade/unitWords.ts';
import { units, type Dimension, type UnitId } from '../../trade/units.ts';
import type { CsvRecord } from './records.ts';
import type { PositiveSide } from './shotFile.ts';
import { readSignStatement } from './signStatement.ts';
import { spacesJoined } from './texts.ts';

/** What the lines above the headings state. */
export interface Statements {
  readonly units: ReadonlyMap<Dimension | MetricId, UnitId>;
  /** Quantities whose unit is stated twice, differently, with the line of the second. */
  readonly conflicts: readonly { readonly of: Dimension | MetricId; readonly line: number }[];
  readonly positive: PositiveSide | 'contradiction' | null;
  readonly club: string | null;
  readonly hitter: string | null;
  /** Dates as typed. */
  readonly dates: readonly { readonly text: string; readonly line: number }[];
}

const dimensionWords: Readonly<Record<string, Dimension>> = {
  speed: 'speed',
  speeds: 'speed',
  velocity: 'speed',
  distance: 'distance',
  distances: 'distance',
  length: 'distance',
  lengths: 'distance',
  height: 'height',
  heights: 'height',
  angle: 'angle',
  angles: 'angle',
  spin: 'spin',
  impact: 'offset',
  strike: 'offset',
};

const metricOfPhrase = new Map<string, MetricId>();
for (const metric of Object.keys(metricHeadings) as MetricId[]) {
  for (const phrase of metricHeadings[metric]) {
    if (!Object.hasOwn(dimensionWords, phrase)) metricOfPhrase.set(phrase, metric);
  }
}

const filler = new Set([
  'unit',
  'units',
  'in',
  'are',
  'is',
  'all',
  'as',
  ':',
  '=',
  '(',
  ')',
  '-',
  ',',
  'the',
]);
const tokens = /[\p{L}°º⁻¹·]+(?:[/.][\p{L}]+)*|[:=(),;|]|\S+/gu;

/** Units named in one line: `speed: mph; distance: yd`, `Distances in metres`, `Units: yd, mph`. */
function unitsInLine(line: string): readonly (readonly [Dimension | MetricId, UnitId])[] {
  const found: (readonly [Dimension | MetricId, UnitId])[] = [];
  const words = line.toLowerCase().match(tokens) ?? [];
  const used = new Set<number>();
  for (let at = 0; at < words.length; at += 1) {
    for (const size of [3, 2, 1]) {
      const phrase = words.slice(at, at + size).join(' ');
      const subject = (size === 1 ? dimensionWords[phrase] : undefined) ?? metricOfPhrase.get(phrase);
      if (subject === undefined || !(Object.hasOwn(dimensionWords, phrase) || metricOfPhrase.has(phrase)))
        continue;
      let next = at + size;
      while (next < words.length && filler.has(words[next] ?? '')) next += 1;
      const unit = unitNamed(words[next] ?? '');
      if (unit === null) continue;
      found.push([subject, unit]);
      used.add(next);
      at = next;
      break;
    }
  }
  if (/^\W*(?:all\s+)?units?\b/i.test(line)) {
    const rest = words
      .slice(1)
      .filter((word, index) => !used.has(index + 1) && !filler.has(word) && !/^[;|/]$/.test(word));
    const named = rest.map(unitNamed);
    if (named.every((unit) => unit !== null)) {
      for (const unit of named)
        for (const dimension of units[unit].dimensions.slice(0, 1)) found.push([dimension, unit]);
    }
  }
  return found;
}

const keyPhrases = (phrases: readonly string[]): RegExp => new RegExp(`^(?:${phrases.join('|')})$`, 'i');
const clubKey = keyPhrases(['club', 'club name', 'club label', 'club head', 'head', 'contender']);
const hitterKey = keyPhrases(roleHeadings.hitter);
const dateKey = keyPhrases([...roleHeadings.date, ...roleHeadings.time]);

/** A line such as `Club: Head A` or `Player,One`: its key and its value. */
export function readKeyLine(
  cells: readonly string[],
): { readonly key: 'club' | 'hitter' | 'date'; readonly value: string } | null {
  const filled = cells.map((cell) => cell.trim()).filter((cell) => cell !== '');
  const [first = '', second, third] = filled;
  if (third !== undefined) return null;
  const colon = /^([^:=]{1,30}?)\s*[:=]\s*(.+)$/s.exec(first);
  const parts =
    second === undefined
      ? [colon?.[1], colon?.[2]]
      : colon === null
        ? [first.replace(/\s*[:=]$/, ''), second]
        : [];
  const [name = '', value = ''] = parts;
  const key = clubKey.test(name)
    ? 'club'
    : hitterKey.test(name)
      ? 'hitter'
      : dateKey.test(name)
        ? 'date'
        : null;
  return key === null || value === '' ? null : { key, value: spacesJoined(value) };
}

/** Reads the lines above a line of headings. */
export function readStatements(records: readonly CsvRecord[]): Statements {
  const stated = new Map<Dimension | MetricId, UnitId>();
  const conflicts: { of: Dimension | MetricId; line: number }[] = [];
  const dates: { text: string; line: number }[] = [];
  let positive: Statements['positive'] = null;
  let club: string | null = null;
  let hitter: string | null = null;
  for (const { cells, line } of records) {
    const keyed = readKeyLine(cells);
    if (keyed?.key === 'club') club = keyed.value;
    else if (keyed?.key === 'hitter') hitter = keyed.value;
    else if (keyed?.key === 'date') dates.push({ text: keyed.value, line });
    else {
      const text = cells
        .filter((cell) => cell.trim() !== '')
        .join(' ; ')
        .slice(0, 2000);
      for (const [of, unit] of unitsInLine(text)) {
        if ((stated.get(of) ?? unit) !== unit) conflicts.push({ of, line });
        stated.set(of, unit);
      }
      const speaksOfSigns = /positive|negative|\bsigns?\b|\+/i.test(text);
      const sign = speaksOfSigns ? readSignStatement(text).positive : null;
      if (sign !== null) positive = positive === null || positive === sign ? sign : 'contradiction';
    }
  }
  return { units: stated, conflicts, positive, club, hitter, dates };
}
