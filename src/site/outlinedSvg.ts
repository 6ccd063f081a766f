import { replaceTexts, type SvgText } from '../kit/svgTexts.ts';
import { fontOf } from './fontFiles.ts';
import { glyphOutline, shapedLine, unitsPerEm } from './shapedLine.ts';

/** A drawing of ours whose letters are shapes, so that it needs no font, and names none that a printer would look for. */
export function outlinedSvg(svg: string): string {
  return replaceTexts(svg, outlinedText).replaceAll(/<(?:g|svg)\b[^>]*>/g, (tag) =>
    tag.replaceAll(/\s(?:font-[a-z]+|text-anchor)="[^"]*"/g, ''),
  );
}

/** A text as a path in its place. */
export function outlinedText(text: SvgText): string {
  const { own, words, size, anchor, strokeWidth, x, y } = text;
  const font = fontOf(text);
  const { glyphs, width } = shapedLine(words, font);
  const path = glyphs
    .map((glyph) => {
      const outline = glyphOutline(font, glyph.number);
      return outline === '' ? '' : `M${glyph.x} ${glyph.y}${outline}`;
    })
    .join('');
  if (path === '') return '';
  const scale = size / unitsPerEm(font);
  const before = /\stransform="([^"]*)"/.exec(own)?.[1] ?? '';
  const start = x - startsAt[anchor] * width * scale;
  const transform = `${before}translate(${round(start)},${y})scale(${round(scale)},${round(-scale)})`;
  const line = strokeWidth === null ? '' : ` stroke-width="${round(strokeWidth / scale)}"`;
  return `<path transform="${transform}"${line} d="${path}"/>`;
}

/** The part of a line that lies before its anchor. */
export const startsAt = { start: 0, middle: 0.5, end: 1 } as const;

const round = (value: number): number => Math.round(value * 1e5) / 1e5;
