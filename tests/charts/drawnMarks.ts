import { contenderMark } from '../../src/charts/contenderMarks.ts';
import { inherited, parseSvg, translation } from './inspectSvg.ts';
import { inside, outline } from './outlines.ts';

/** A filled mark of a contender as drawn, px. */
export interface DrawnMark {
  readonly index: number;
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** Every filled mark of the contenders named by `indices`, those beside names among them, in order of drawing. */
export const drawnMarks = (svg: string, indices: readonly number[]): readonly DrawnMark[] =>
  [...parseSvg(svg).querySelectorAll('circle, path')].flatMap((element) => {
    const index = indices.find(
      (place) => inherited(element, 'fill') === `var(--${contenderMark(place).colour})`,
    );
    if (index === undefined) return [];
    if (element.tagName.toLowerCase() === 'circle') {
      const [x = 0, y = 0, radius = 0] = ['cx', 'cy', 'r'].map((name) => Number(element.getAttribute(name)));
      return [{ index, x, y, radius }];
    }
    const unit = Math.max(...contenderMark(index).corners.map(([x]) => x));
    const [x, y] = translation(element);
    const across = [...(element.getAttribute('d') ?? '').matchAll(/[ML](-?[\d.]+),/g)].map(([, at]) =>
      Number(at),
    );
    return [{ index, x, y, radius: Math.max(...across) / unit }];
  });

/** The share of each mark that those drawn after it leave to be seen, their hair of paper counted, on a fine grid. */
export const sharesSeen = (drawn: readonly DrawnMark[]): readonly number[] => {
  const outlines = drawn.map(({ index, x, y, radius }) => ({
    own: outline(contenderMark(index), x, y, radius),
    hiding: outline(contenderMark(index), x, y, radius + 0.5),
  }));
  return drawn.map(({ x, y, radius }, place) => {
    const own = outlines[place]?.own ?? [];
    const later = outlines.slice(place + 1).filter((_, next) => {
      const other = drawn[place + 1 + next];
      return (
        other !== undefined && Math.hypot(other.x - x, other.y - y) < 1.5 * (radius + other.radius + 0.5)
      );
    });
    let [all, seen] = [0, 0];
    for (let across = -1.5; across <= 1.5; across += 0.08) {
      for (let along = -1.5; along <= 1.5; along += 0.08) {
        const point = [x + across * radius, y + along * radius] as const;
        if (!inside(point, own)) continue;
        all += 1;
        if (!later.some(({ hiding }) => inside(point, hiding))) seen += 1;
      }
    }
    return seen / all;
  });
};
