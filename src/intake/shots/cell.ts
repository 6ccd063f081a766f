import { isUnreadUnit, unitNamed } from '../../trade/unitWords.ts';
import type { UnitId } from '../../trade/units.ts';
import { readNumeral, type Numeral } from './numeral.ts';
import type { PositiveSide } from './shotFile.ts';

/** What one cell of a metric column says, before its decimal mark and unit are decided. */
export type Cell =
  | { readonly kind: 'missing' }
  | { readonly kind: 'not-a-number' }
  /** A number with both a sign and a letter for its side. */
  | { readonly kind: 'sign-and-letter' }
  | NumberCell;

export interface NumberCell {
  readonly kind: 'number';
  readonly numeral: Numeral;
  readonly negative: boolean;
  /** Whether a plus or minus is written. */
  readonly signed: boolean;
  /** A negative written in brackets, with its minus behind, or behind an apostrophe. */
  readonly oddNegative: boolean;
  readonly unit: UnitId | null;
  readonly side: PositiveSide | null;
}

const missing: Cell = { kind: 'missing' };
const notANumber: Cell = { kind: 'not-a-number' };

/** Blank, dashes and the marks spreadsheets leave: not measured. */
const missingMarks = /^(?:-|--|–|—|n\/a|#n\/a|#div\/0!|nan|null)?$/i;

export function isMissingMark(text: string): boolean {
  return text.length <= 7 && missingMarks.test(text);
}

const minuses = /^[-−‐‑‒–﹣－]/;
const plainNumber = /^\d+(?:\.\d+)?$/;

/** Letters and words that name a side behind a number. */
export const sides: Readonly<Record<string, PositiveSide>> = {
  l: 'left',
  left: 'left',
  r: 'right',
  right: 'right',
  toe: 'toe',
  heel: 'heel',
  t: 'toe',
  h: 'heel',
  up: 'up',
  down: 'down',
  u: 'up',
  d: 'down',
  high: 'up',
  low: 'down',
};

const parts =
  /^(?:(?<before>[a-z]+)\.?\s*)?(?<sign>[-−‐‑‒–﹣－+]?)\s*(?<body>[\d.,](?:[\d.,]|[ \u00a0\u2007\u2009\u202f'’](?=\d)|e[+-]?\d)*)(?<behind>[-−]?)\s*(?<after>.*)$/iu;

/** Removes what spreadsheets put around a number to keep it as text: `="155.5"` and a leading apostrophe. */
function withoutGuard(text: string): { readonly text: string; readonly apostrophe: boolean } {
  const formula = /^="([^"]*)"$/.exec(text)?.[1];
  if (formula !== undefined) return { text: formula.trim(), apostrophe: false };
  const apostrophe = text.startsWith("'") || text.startsWith('’');
  return { text: apostrophe ? text.slice(1).trim() : text, apostrophe };
}

/** The unit and the side that follow a number: `km/h`, `yd R`, `L`. */
function readAfter(
  after: string,
): { readonly unit: UnitId | null; readonly side: PositiveSide | null } | null {
  if (after === '') return { unit: null, side: null };
  const unit = unitNamed(after);
  if (unit !== null) return { unit, side: null };
  if (isUnreadUnit(after)) return null;
  const words = after.toLowerCase().replace(/\.$/, '').split(/\s+/);
  const [last = '', first = ''] = [words.at(-1), words[0]];
  const side = sides[last] ?? sides[first];
  if (side === undefined) return null;
  if (words.length === 1) return { unit: null, side };
  const rest = unitNamed((sides[last] === undefined ? words.slice(1) : words.slice(0, -1)).join(' '));
  return rest === null ? null : { unit: rest, side };
}

/** Reads one cell of a metric column. */
export function readCell(raw: string): Cell {
  if (plainNumber.test(raw)) {
    return {
      kind: 'number',
      numeral: readNumeral(raw),
      negative: false,
      signed: false,
      oddNegative: false,
      unit: null,
      side: null,
    };
  }
  const trimmed = raw.trim();
  if (isMissingMark(trimmed)) return missing;
  if (trimmed.length > 60) return notANumber;
  const guarded = withoutGuard(trimmed);
  const bracketed = /^\(([^()]*)\)(.*)$/.exec(guarded.text);
  const inner =
    bracketed === null ? guarded.text : `${(bracketed[1] ?? '').trim()} ${bracketed[2] ?? ''}`.trim();
  const groups = parts.exec(inner)?.groups;
  if (groups === undefined) return isMissingMark(guarded.text) ? missing : notANumber;
  const { before = '', sign = '', body = '', behind = '', after = '' } = groups;

  const numeral = readNumeral(body);
  const ending = readAfter(after.trim());
  if ((numeral.point === null && numeral.comma === null) || ending === null) return notANumber;
  const lead = before === '' ? null : (sides[before.toLowerCase()] ?? 'unknown');
  if (lead === 'unknown' || (lead !== null && ending.side !== null)) return notANumber;
  const signs = [sign !== '', behind !== '', bracketed !== null].filter(Boolean).length;
  if (signs > 1) return notANumber;

  const side = lead ?? ending.side;
  if (signs > 0 && side !== null) return { kind: 'sign-and-letter' };
  const negative = minuses.test(sign) || behind !== '' || bracketed !== null;
  return {
    kind: 'number',
    numeral,
    negative,
    signed: signs > 0,
    oddNegative:
      negative &&
      (behind !== '' || bracketed !== null || guarded.apostrophe || (sign !== '-' && sign !== '−')),
    unit: ending.unit,
    side,
  };
}
