import { outlinedSvg } from './outlinedSvg.ts';

/**
 * A drawing of ours for print: letters as shapes, so that no font is needed, and a width on paper.
 *
 * @param widthMm of the whole drawing, mm
 * @throws where the drawing has no size
 */
export function printedSvg(svg: string, widthMm: number): string {
  return outlinedSvg(svg).replace(/^<svg\b[^>]*>/, (opening) => {
    const [width, height] = ['width', 'height'].map((side) =>
      Number(new RegExp(`\\s${side}="([\\d.]+)"`).exec(opening)?.[1]),
    );
    if (width === undefined || height === undefined || !(width > 0) || !(height > 0))
      throw new Error('The drawing has no size.');
    return opening
      .replace(/\swidth="[\d.]+"/, ` width="${widthMm}mm"`)
      .replace(/\sheight="[\d.]+"/, ` height="${((widthMm * height) / width).toFixed(2)}mm"`);
  });
}
