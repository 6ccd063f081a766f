import { roleHeadings } from '../../trade/columnRoles.ts';
import { metrics, type MetricId } from '../../trade/metrics.ts';
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
for (const { id, headings } of Object.values(metrics)) {
  for (const phrase of headings) {
    if (!Object.hasOwn(dimensionWords, phrase)) metricOfPhrase.set(phrase, id);
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
  'and',
  '&',
  ':',
  '=',
  '(',
  ')',
  '-',
  ',',
  '/',
  'the',
]);
const separators = new Set([';', '|']);
const tokens = /[\p{L}°º⁻¹·]+(?:[/.][\p{L}]+)*|[:=(),;|&/]|\S+/gu;

type Subject = Dimension | MetricId;

/** The quantity that stands at a position, and how many words it takes. */
function subjectAt(
  words: readonly string[],
  at: number,
): { readonly subject: Subject; readonly size: number } | null {
  for (const size of [3, 2, 1]) {
    const phrase = words.slice(at, at + size).join(' ');
    const dimension = Object.hasOwn(dimensionWords, phrase) ? dimensionWords[phrase] : undefined;
    const subject = dimension ?? metricOfPhrase.get(phrase);
    if (subject !== undefined) return { subject, size };
  }
  return null;
}

/** Units named in one line: `speed: mph; distance: yd`, `Carry and total in metres`, `Units: yd, mph`. */
function unitsInLine(line: string): readonly (readonly [Subject, UnitId])[] {
  const found: (readonly [Subject, UnitId])[] = [];
  const words = line.toLowerCase().match(tokens) ?? [];
  const alone: UnitId[] = [];
  let waiting: Subject[] = [];
  let plain = true;
  for (let at = 0; at < words.length; at += 1) {
    const word = words[at] ?? '';
    const named = filler.has(word) || separators.has(word) ? null : subjectAt(words, at);
    const unit = filler.has(word) || named !== null ? null : unitNamed(word);
    if (named !== null) {
      waiting.push(named.subject);
      at += named.size - 1;
    } else if (unit !== null) {
      if (waiting.length === 0) alone.push(unit);
      found.push(...waiting.map((subject) => [subject, unit] as const));
      waiting = [];
    } else if (!filler.has(word)) {
      waiting = [];
      if (!separators.has(word) && !/^(?:values|numbers|measurements|measured)$/.test(word)) plain = false;
    }
  }
  const announces = /^\W*(?:all\s+)?(?:units?|values|numbers|measurements|measured)\b/i.test(line);
  if (!announces || !plain || found.length > 0) return found;
  return alone.flatMap((unit) =>
    units[unit].dimensions.slice(0, 1).map((dimension) => [dimension, unit] as const),
  );
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
