import { replaceTexts } from '../kit/svgTexts.ts';
import { embeddedFonts } from './embeddedFonts.ts';
import { fontOf } from './fontFiles.ts';
import { shapedLine, unitsPerEm } from './shapedLine.ts';

/**
 * A drawing of ours that stays whole wherever it is opened: with its fonts inside, and every text with the length that it
 * has in them, to which a renderer that passes them over fits its own.
 */
export async function portableSvg(svg: string, folder?: string): Promise<string> {
  const fonts = `<style>${await embeddedFonts(svg, folder)}</style>`;
  return (
    measuredTexts(svg)
      .replace('<rect', () => `${fonts}<rect`)
      // Else some browsers set letters on whole pixels, and stretch or squeeze the line that comes of it.
      .replace('<svg ', '<svg text-rendering="geometricPrecision" ')
  );
}

function measuredTexts(svg: string): string {
  return replaceTexts(svg, (text, whole) => {
    const font = fontOf(text);
    const length = (shapedLine(text.words, font).width * text.size) / unitsPerEm(font);
    if (length === 0) return whole;
    return whole.replace(
      '<text',
      () => `<text textLength="${Math.round(length * 10) / 10}" lengthAdjust="spacingAndGlyphs"`,
    );
  });
}
