import type { Findings } from '../findings/findings.ts';
import type { Front } from '../intake/authored/front.ts';
import { fromCanonical, toCanonical, units, type UnitId } from '../trade/units.ts';
import { unitNamed } from '../trade/unitWords.ts';
import { isMetricId } from '../trade/metrics.ts';
import { numberWords, valueOfWords } from './numberWords.ts';

/** A number with a trade unit as it stands in prose. */
export interface WrittenNumber {
  readonly text: string;
  readonly at: number;
  readonly value: number;
  readonly unit: UnitId;
  /** Half the step it is written in, in its unit. */
  readonly slack: number;
  /** Whether it is the size of a room or of what lies in it: no reading of a shot. */
  readonly ofAPlace: boolean;
}

// Thousands may be parted by a comma or, as many write them, by a blank.
const digits = String.raw`\d{1,3}(?:[,\u00a0\u202f ]\d{3}){1,3}(?:\.\d+)?|\d+(?:\.\d+)?`;
// What is written in words is taken whole: "two hundred and six" is no range from 200.
const number = (name: string): string =>
  String.raw`${digits}|(?=(?<${name}>${numberWords})(?![\p{L}\p{N}]))\k<${name}>`;
// Longer spellings first. "in" and "s" are words and letters as well, and temperatures are no reading of a shot.
const unit = String.raw`yards?|yds?|metres?|meters?|mph|km\/h|m\/s|rpm|degrees?(?! (?:celsius|fahrenheit|[CF]\b))|°(?!\s*[CF]\b)|feet|foot|ft|inch(?:es)?|cm|mm|m`;
const written = new RegExp(
  String.raw`(?<![\p{L}\p{N}.,])(?:(?<first>${number('firstWords')})(?<joiner>\s*(?:to|and|or|-|–)\s*))?[+−±-]?(?<second>${number('secondWords')})[\s -]*(?<word>${unit})(?![\p{L}\p{N}/])`,
  'giu',
);
/** How such a number ends. Most sentences have none, and looking for the end costs a small part of looking for the whole. */
const numberEnd = new RegExp(String.raw`[\d\s-](?:${unit})(?![\p{L}\p{N}/])`, 'iu');
/** What follows the size of a room and of what lies in it, and a height over the sea. */
const ofAPlace =
  /^[ -](?:wide|tall|deep|thick|square|by \d|above (?:the )?sea\b|below (?:the )?sea\b|of (?:net|mat|turf|ceiling)\b)/i;
const ofAPlaceWithin = 20;
const roughly = /\b(?:about|around|roughly|some|nearly|almost|over|under|approximately|close to)\s+[+−±-]?$/i;

/** No such word with its blanks is longer; looking back over all that was written would take time by its square. */
const roughlyWithin = 64;

/** The numbers of a text that carry a unit of distance, speed, angle or spin; both ends of a range. */
export function writtenNumbers(text: string): readonly WrittenNumber[] {
  if (!numberEnd.test(text)) return [];
  return [...text.matchAll(written)].flatMap((found): WrittenNumber[] => {
    const [whole] = found;
    const { first = '', joiner = '', second = '', word = '' } = found.groups ?? {};
    const id = unitNamed(word);
    if (id === null) return [];
    const at = found.index;
    const after = text.slice(at + whole.length, at + whole.length + ofAPlaceWithin);
    const rough = roughly.test(text.slice(Math.max(0, at - roughlyWithin), at));
    const read = (typed: string, offset: number): WrittenNumber => ({
      text: `${typed} ${word}`,
      at: offset,
      value: valueOf(typed),
      unit: id,
      slack: slackOf(typed, id, rough),
      ofAPlace: ofAPlace.test(after),
    });
    const secondAt = at + whole.indexOf(second, first.length + joiner.length);
    return [...(first === '' ? [] : [read(first, at)]), read(second, secondAt)];
  });
}

function valueOf(typed: string): number {
  return /^\d/.test(typed) ? Number(typed.replace(/[^\d.]/g, '')) : valueOfWords(typed);
}

/** Half the last digit; pages print spin in steps of 50 and angles in halves; "about 250" is rounded to its 50. */
function slackOf(typed: string, id: UnitId, rough: boolean): number {
  const value = valueOf(typed);
  const decimals = typed.split('.')[1]?.length ?? 0;
  const last = 10 ** -decimals / 2;
  if (id === 'rpm' && value % 50 === 0) return 25;
  if (id === 'deg' && value % 0.5 === 0) return Math.max(last, 0.25);
  if (!rough || decimals > 0) return last;
  const zeros = /0+$/.exec(String(value))?.[0].length ?? 0;
  return zeros > 0 ? 10 ** zeros / 2 : value % 5 === 0 ? 2.5 : last;
}

/** A value that prose may repeat, canonical unit, and what it is a value of. */
export interface KnownValue {
  readonly kind: 'speed' | 'length' | 'angle' | 'spin' | 'other';
  readonly value: number;
}

function kindOf(id: UnitId): KnownValue['kind'] {
  const [dimension] = units[id].dimensions;
  switch (dimension) {
    case 'speed':
    case 'angle':
    case 'spin':
      return dimension;
    case 'distance':
    case 'height':
    case 'offset':
      return 'length';
    default:
      return 'other';
  }
}

/** Whether a known value, left or right alike, rounds to what is written. */
export function isKnown({ value, unit: id, slack }: WrittenNumber, known: readonly KnownValue[]): boolean {
  const kind = kindOf(id);
  return known.some(
    (own) =>
      own.kind === kind && Math.abs(Math.abs(fromCanonical(own.value, id)) - value) <= slack * (1 + 1e-9),
  );
}

/** Counts, chances and ratios stand beside the readings and are none; checks of an answer are not the answer. */
const noReading: ReadonlySet<string> = new Set([
  'n',
  'p',
  'df',
  'level',
  'statistic',
  'of',
  'byLuck',
  'share',
  'ratio',
  'shotsNeeded',
  'shotsToShowLevel',
  'clearlyMore',
  'clearlyLess',
  'singleShot',
  'judgedTogether',
  'resolution',
  'holds',
  'trends',
  'byRounds',
]);

/** All values that the findings hold. */
export function valuesFound({ metrics, straighter, landing, claims }: Findings): readonly KnownValue[] {
  const side = metrics.find(({ id }) => id === 'side');
  return [
    ...metrics.flatMap((metric) =>
      isMetricId(metric.id) ? numbersIn(metric).map((value) => ({ kind: kindOf(metric.unit), value })) : [],
    ),
    ...(side === undefined ? [] : numbersIn(straighter).map((value) => ({ kind: kindOf(side.unit), value }))),
    ...(landing === null ? [] : landingValues(landing)),
    ...claims.flatMap(({ standing, byAtLeast, metric }): KnownValue[] => {
      const own = metrics.find(({ id }) => id === metric);
      return standing === 'borne-out' && own !== undefined && byAtLeast > 0
        ? [{ kind: kindOf(own.unit), value: byAtLeast }]
        : [];
    }),
  ];
}

function landingValues({ laneM, byContender }: NonNullable<Findings['landing']>): KnownValue[] {
  const means = byContender.flatMap(({ meanSide, meanCarry }) => [meanSide, meanCarry]);
  return [laneM, ...means].flatMap((value) => (value === null ? [] : [{ kind: 'length' as const, value }]));
}

function numbersIn(tree: unknown): readonly number[] {
  const numbers: number[] = [];
  const gather = (branch: unknown): void => {
    if (typeof branch === 'number') numbers.push(branch);
    else if (Array.isArray(branch)) branch.forEach(gather);
    else if (typeof branch === 'object' && branch !== null)
      for (const [key, value] of Object.entries(branch)) if (!noReading.has(key)) gather(value);
  };
  gather(tree);
  return numbers;
}

/** All values that the shop wrote elsewhere in the report; what it claims, corrects or has seen is no source for prose. */
export function valuesWritten(front: Front): readonly KnownValue[] {
  const { claims, corrections, replies, seen, summary, title, ...sources } = front;
  return textsIn(sources).flatMap(writtenNumbers).map(valueOfNumber);
}

/** A written number as a value that prose may repeat. */
export function valueOfNumber({ value, unit: id }: WrittenNumber): KnownValue {
  return { kind: kindOf(id), value: toCanonical(value, id) };
}

function textsIn(tree: unknown): string[] {
  // A length on a build sheet is often written "45 in", which prose never does.
  if (typeof tree === 'string') return [tree.replace(/(\d)\s*in\b/g, '$1 inches')];
  if (Array.isArray(tree)) return tree.flatMap(textsIn);
  return typeof tree === 'object' && tree !== null ? Object.values(tree).flatMap(textsIn) : [];
}
