import { inherited, parseSvg } from './inspectSvg.ts';

/** Rings and stretches of bars in order of drawing, px across. */
export const rowSigns = (svg: string) => {
  const root = parseSvg(svg);
  const across = (width: string): readonly (readonly number[])[] =>
    [...root.querySelectorAll('path')]
      .filter(
        (path) => inherited(path, 'stroke-width') === width && inherited(path, 'stroke') === 'var(--ink)',
      )
      .map((path) =>
        [...(path.getAttribute('d') ?? '').matchAll(/[ML](-?[\d.]+),/g)].map(([, x]) => Number(x)),
      );
  return {
    rings: [...root.querySelectorAll('circle[r="7"]')].map((circle) => Number(circle.getAttribute('cx'))),
    thin: across('2.5'),
    thick: across('9'),
  };
};
