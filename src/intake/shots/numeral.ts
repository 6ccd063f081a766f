/** A number as typed, without its sign, under each of the two meanings of `.` and `,`. */
export interface Numeral {
  /** Its value if the decimal mark is a point; null where it cannot be read so. */
  readonly point: Reading | null;
  /** Its value if the decimal mark is a comma. */
  readonly comma: Reading | null;
}

export interface Reading {
  readonly value: number;
  /** The step of its last digit: 0.1 for `155.4`. */
  readonly step: number;
}

export type DecimalMark = 'point' | 'comma';

/** Spaces and apostrophes that stand between groups of three digits. */
const groupSpaces = /^[1-9]\d{0,2}(?:([ \u00a0\u2007\u2009\u202f]|['’])\d{3})(?:\1\d{3})*(?=$|[.,eE])/;

const longest = 40;

function readWith(body: string, decimal: '.' | ',', group: '.' | ','): Reading | null {
  const [mantissa = '', exponent, surplus] = body.split(/[eE]/);
  if (surplus !== undefined || (exponent !== undefined && !/^[+-]?\d{1,3}$/.test(exponent))) return null;
  const [whole = '', fraction = '', more] = mantissa.split(decimal);
  if (more !== undefined || !/^\d*$/.test(fraction) || (whole === '' && fraction === '')) return null;
  const grouped = whole.includes(group);
  if (grouped && !/^[1-9]\d{0,2}(?:[.,]\d{3})+$/.test(whole)) return null;
  const digits = grouped ? whole.replaceAll(group, '') : whole;
  if (!/^\d*$/.test(digits)) return null;
  const value = Number(`${digits || '0'}.${fraction || '0'}e${exponent ?? '0'}`);
  if (!Number.isFinite(value)) return null;
  return { value, step: Number(`1e${Number(exponent ?? 0) - fraction.length}`) };
}

const plain = /^\d+(?:\.\d+)?$/;
const likeThousands = /^[1-9]\d{0,2}\.\d{3}$/;

/** Digits with at most a point: nearly every number there is, so read without taking it apart. */
function readPlain(text: string): Numeral {
  const point = text.indexOf('.');
  const reading = { value: Number(text), step: point < 0 ? 1 : Number(`1e${point + 1 - text.length}`) };
  if (point < 0) return { point: reading, comma: reading };
  return { point: reading, comma: likeThousands.test(text) ? readWith(text, ',', '.') : null };
}

/** Reads digits, marks and an exponent; both readings null where it is no number. */
export function readNumeral(text: string): Numeral {
  if (text.length > longest) return { point: null, comma: null };
  if (plain.test(text)) return readPlain(text);
  const spaced = groupSpaces.exec(text);
  const body = spaced === null ? text : spaced[0].replace(/[^\d]/g, '') + text.slice(spaced[0].length);
  return { point: readWith(body, '.', ','), comma: readWith(body, ',', '.') };
}
