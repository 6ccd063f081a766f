/** A chart as part of a larger drawing. */
interface ChartInside {
  /** Before it is scaled, px. */
  readonly height: number;
  readonly at: (x: number, y: number, scale: number) => string;
}

/** A chart as a group: a renderer would clip an SVG within an SVG, which costs it a second picture. */
export function chartInside(svg: string): ChartInside {
  const opening = /^<svg\b[^>]*>/.exec(svg)?.[0] ?? '';
  const height = Number(/\sheight="([\d.]+)"/.exec(opening)?.[1] ?? NaN);
  if (!Number.isFinite(height)) throw new Error('The chart has no height.');
  const bare = opening.replaceAll(/\s(?:role|aria-labelledby|class|xmlns|width|height|viewBox)="[^"]*"/g, '');
  const body = svg
    .slice(opening.length)
    .replace(/<title[^>]*>[^<]*<\/title>/, '')
    .replace(/<\/svg>\s*$/, '</g>');
  return {
    height,
    at: (x, y, scale) =>
      bare.replace(
        '<svg',
        () => `<g transform="translate(${x},${y})${scale === 1 ? '' : ` scale(${scale})`}"`,
      ) + body,
  };
}
