import { readFileSync } from 'node:fs';
import { Blob, Buffer as Shaped, Face, Font, shape, versionString } from 'harfbuzzjs';
import { fontFile, type FontName } from './fontFiles.ts';

/** A letter, or several in one shape, by its number in the font, and where it stands on its line, in units of the font. */
interface Glyph {
  readonly number: number;
  readonly x: number;
  readonly y: number;
}

/** A line as a font sets it, kerned and with its ligatures; in units of the font, upwards from its foot. */
interface ShapedLine {
  readonly glyphs: readonly Glyph[];
  readonly width: number;
}

/** Left, right, foot and head of a glyph's ink, in units of the font. */
interface InkBox {
  readonly left: number;
  readonly right: number;
  readonly foot: number;
  readonly head: number;
}

/** Of what sets the lines. */
export const shaperVersion: string = versionString();

interface OpenFont {
  readonly font: Font;
  readonly unitsPerEm: number;
  readonly outlines: Map<number, string>;
}

const open = new Map<FontName, OpenFont>();

function opened(name: FontName): OpenFont {
  const known = open.get(name);
  if (known !== undefined) return known;
  const face = new Face(new Blob(new Uint8Array(readFileSync(fontFile(name)))));
  const made = { font: new Font(face), unitsPerEm: face.upem, outlines: new Map<number, string>() };
  open.set(name, made);
  return made;
}

export function unitsPerEm(name: FontName): number {
  return opened(name).unitsPerEm;
}

// A line of a picture is set for its pixels, for its length in the file, and again in the other units.
const lines = new Map<string, ShapedLine>();
const mostLines = 20_000;

export function shapedLine(words: string, name: FontName): ShapedLine {
  const key = `${name} ${words}`;
  const known = lines.get(key);
  if (known !== undefined) return known;
  if (lines.size >= mostLines) lines.clear();
  const set = setLine(words, name);
  lines.set(key, set);
  return set;
}

// Filled anew for each line.
const shaped = new Shaped();

function setLine(words: string, name: FontName): ShapedLine {
  shaped.reset();
  shaped.addText(words);
  shaped.guessSegmentProperties();
  shape(opened(name).font, shaped);
  const glyphs: Glyph[] = [];
  let width = 0;
  for (const {
    codepoint: number,
    xAdvance = 0,
    xOffset = 0,
    yOffset = 0,
  } of shaped.getGlyphInfosAndPositions()) {
    glyphs.push({ number, x: width + xOffset, y: yOffset });
    width += xAdvance;
  }
  return { glyphs, width };
}

/** The box around a glyph's ink; null where it has none. */
export function inkBox(name: FontName, glyph: number): InkBox | null {
  const box = opened(name).font.glyphExtents(glyph);
  if (box === undefined || box.width === 0) return null;
  return {
    left: box.xBearing,
    right: box.xBearing + box.width,
    head: box.yBearing,
    foot: box.yBearing + box.height,
  };
}

/** The outline of a glyph as a path of steps from its place, so that it serves wherever it stands; empty where it has none. */
export function glyphOutline(name: FontName, glyph: number): string {
  const { font, outlines } = opened(name);
  const known = outlines.get(glyph) ?? inSteps(font.glyphToJson(glyph));
  outlines.set(glyph, known);
  return known;
}

function inSteps(commands: readonly { readonly type: string; readonly values: readonly number[] }[]): string {
  let [x, y, startX, startY] = [0, 0, 0, 0];
  return commands
    .map(({ type, values }) => {
      const [fromX, fromY] = [x, y];
      const steps = values.map((value, at) => Math.round(value) - (at % 2 === 0 ? fromX : fromY));
      if (type === 'Z') [x, y] = [startX, startY];
      else [x, y] = [fromX + (steps.at(-2) ?? 0), fromY + (steps.at(-1) ?? 0)];
      if (type === 'M') [startX, startY] = [x, y];
      return `${type.toLowerCase()}${steps.join(' ')}`;
    })
    .join('');
}
