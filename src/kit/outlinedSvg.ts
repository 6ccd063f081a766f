import { escapeXml } from '../prose/escapeXml.ts';

/** What an SVG of outlines is called, and how wide it is on paper. */
export interface OutlinedName {
  readonly title: string;
  readonly alt: string;
  readonly widthMm: number;
}

/** Digits after hundredths of a px, which are two thousandths of a millimetre on paper. */
const longNumber = /(\.\d\d)\d+/g;

/**
 * An SVG that holds outlines alone, with its width in millimetres, and with its words as title and description, which
 * is where readers without eyes and searches find them.
 *
 * @param outlines as the renderer writes them: one `svg` with a width and a height in px
 * @throws where they have no size
 */
export function outlinedSvg(outlines: string, { title, alt, widthMm }: OutlinedName): string {
  const opening = /^<svg\b[^>]*>/.exec(outlines)?.[0] ?? '';
  const [width, height] = ['width', 'height'].map((side) =>
    Number(new RegExp(`\\s${side}="([\\d.]+)"`).exec(opening)?.[1]),
  );
  if (width === undefined || height === undefined || !(width > 0) || !(height > 0))
    throw new Error('The outlines have no size.');
  const heightMm = Math.round(((widthMm * height) / width) * 100) / 100;
  const head =
    `<svg xmlns="http://www.w3.org/2000/svg" width="${widthMm}mm" height="${heightMm}mm" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="print-title print-desc">` +
    `<title id="print-title">${escapeXml(title)}</title><desc id="print-desc">${escapeXml(alt)}</desc>`;
  const body = outlines
    .slice(opening.length)
    // All that has so many digits or a capital by itself is a path.
    .replaceAll(longNumber, '$1')
    .replaceAll(/ ?\b([A-Z])\b ?/g, '$1')
    .replaceAll(/>\s+</g, '><');
  return head + body.trimStart();
}
