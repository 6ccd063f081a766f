import { inherited, parseSvg } from './inspectSvg.ts';

/** Rings and stretches of bars in order of drawing, px across, without those of the key. */
export const rowSigns = (svg: string) => {
  const root = parseSvg(svg);
  const across = (width: string): readonly (readonly number[])[] =>
    [...root.querySelectorAll('path')]
      .filter(
        (path) => inherited(path, 'stroke-width') === width && inherited(path, 'stroke') === 'var(--ink)',
      )
      .map((path) =>
        [...(path.getAttribute('d') ?? '').matchAll(/[ML](-?[\d.]+),/g)].map(([, x]) => Number(x)),
      )
      // A sample of the key is 26 px long.
      .filter(([from = 0, to = 0]) => to - from !== 26);
  return {
    rings: [...root.querySelectorAll('circle[r="7"]')].map((circle) => Number(circle.getAttribute('cx'))),
    thin: across('2.5'),
    thick: across('9'),
  };
};
