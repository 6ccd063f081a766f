import { woffAdvances, woffTables } from '../charts/woffAdvances.ts';

/** What a line of a font takes up, in parts of its em. */
export interface FontMetrics {
  readonly ascent: number;
  /** Below the line, counted downwards. */
  readonly descent: number;
  readonly lineGap: number;
  /** Average advance of the letters and blanks of English. */
  readonly average: number;
}

/** How often each stands in English text, of a thousand characters: Mayzner and Tresselt's counts as Norvig took them anew, 2013; a blank after 4.79 letters. */
const ofEnglish: Readonly<Record<string, number>> = {
  e: 1249,
  t: 928,
  a: 804,
  o: 764,
  i: 757,
  n: 723,
  s: 651,
  r: 628,
  h: 505,
  l: 407,
  d: 382,
  c: 334,
  u: 273,
  m: 251,
  f: 240,
  p: 214,
  g: 187,
  w: 168,
  y: 166,
  b: 148,
  v: 105,
  k: 54,
  x: 23,
  j: 16,
  q: 12,
  z: 9,
  ' ': 2088,
};

/** Of a WOFF 1.0 file (OpenType tables `head`, `hhea`, `hmtx`). */
export function fontMetrics(specifier: string): FontMetrics {
  const table = woffTables(specifier);
  const em = table('head').readUInt16BE(18);
  const part = (at: number): number => table('hhea').readInt16BE(at) / em;
  return {
    ascent: part(4),
    descent: -part(6),
    lineGap: part(8),
    average: averageOf(woffAdvances(specifier)),
  };
}

function averageOf(advances: ReadonlyMap<number, number>): number {
  let sum = 0;
  let counted = 0;
  for (const [letter, often] of Object.entries(ofEnglish)) {
    const advance = advances.get(letter.codePointAt(0) ?? 0);
    if (advance === undefined) throw new Error(`The font has no "${letter}".`);
    sum += advance * often;
    counted += often;
  }
  return sum / counted / 1000;
}
