import { parseHTML } from 'linkedom';
import { textWidth } from '../../src/charts/textWidth.ts';

/** A text of a chart as placed, px. */
export interface PlacedText {
  readonly text: string;
  readonly size: number;
  readonly weight: 400 | 600;
  readonly left: number;
  readonly right: number;
  /** Of the baseline. */
  readonly y: number;
}

/** Straight lines that are drawn as one path, each from one end to the other. */
const linesIn = (d: string): readonly string[] =>
  [...d.matchAll(/M([^,]+),([^A-Z]+)(?:L([^,]+),([^A-Z]+)|H([^A-Z]+)|V([^A-Z]+))/g)].map(
    ([, x1 = '', y1 = '', x2, y2, right, down]) => `M${x1},${y1}L${x2 ?? right ?? x1},${y2 ?? down ?? y1}`,
  );

/** The chart's elements, each straight line a path of its own. */
export const parseSvg = (svg: string): Element => {
  const root = parseHTML(`<!doctype html><html><body>${svg}</body></html>`).document.querySelector('svg');
  if (root === null) throw new Error('not an SVG');
  for (const path of root.querySelectorAll('path')) {
    const d = path.getAttribute('d') ?? '';
    if (!/^(?:M[^A-Za-z]+[LHV][^A-Za-z]+)+$/.test(d)) continue;
    const lines = linesIn(d).map((line) => {
      const one = path.cloneNode();
      if ('setAttribute' in one && typeof one.setAttribute === 'function') one.setAttribute('d', line);
      return one;
    });
    path.replaceWith(...lines);
  }
  return root;
};

/** The value an element has or takes over from the groups around it. */
export const inherited = (element: Element, name: string): string | null => {
  for (let at: Element | null = element; at !== null; at = at.parentElement) {
    const value = at.getAttribute(name);
    if (value !== null) return value;
  }
  return null;
};

/** Both numbers of `translate(x,y)`. */
export const translation = (element: Element): readonly [number, number] => {
  const [, x, y] = /translate\(([-\d.]+),([-\d.]+)\)/.exec(element.getAttribute('transform') ?? '') ?? [];
  return [Number(x), Number(y)];
};

export const placedTexts = (svg: string): readonly PlacedText[] =>
  [...parseSvg(svg).querySelectorAll('text')].map((element) => {
    const [x, y] = translation(element);
    const text = element.textContent ?? '';
    const size = Number(inherited(element, 'font-size'));
    const weight = inherited(element, 'font-weight') === '600' ? 600 : 400;
    const width = textWidth(text, size, weight);
    const anchor = inherited(element, 'text-anchor');
    const left = anchor === 'end' ? x - width : anchor === 'middle' ? x - width / 2 : x;
    return { text, size, weight, left, right: left + width, y };
  });

/** Pairs of texts that run into one another: baselines nearer than a line's height and widths in common. */
export const collisions = (svg: string): readonly string[] => {
  const texts = placedTexts(svg);
  return texts.flatMap((one, index) =>
    texts
      .slice(index + 1)
      .filter(
        (other) => Math.abs(one.y - other.y) < 13 && one.left < other.right + 3 && other.left < one.right + 3,
      )
      .map((other) => `${one.text} | ${other.text}`),
  );
};

/** What every chart must be, whatever it shows; each broken rule in words. */
export const brokenRules = (svg: string): readonly string[] => {
  const root = parseSvg(svg);
  const width = Number(root.getAttribute('width'));
  const height = Number(root.getAttribute('height'));
  const ids = [...root.querySelectorAll('[id]')].map(({ id }) => id);
  const references = [...svg.matchAll(/url\(#([^)]+)\)/g)].map(([, id]) => id ?? '');
  const broken: string[] = [];
  const demand = (holds: boolean, rule: string): void => {
    if (!holds) broken.push(rule);
  };
  demand(root.getAttribute('role') === 'img', 'is an image');
  demand(root.getAttribute('aria-labelledby') === root.querySelector('title')?.id, 'is named by its title');
  demand((root.querySelector('title')?.textContent ?? '') !== '', 'has a name');
  demand(root.getAttribute('xmlns') === 'http://www.w3.org/2000/svg', 'declares its namespace');
  demand(!/<style|\sstyle=/.test(svg), 'has no styles');
  demand((svg.match(/aria-/g) ?? []).length === 1, 'has no inner labels');
  demand(new Set(ids).size === ids.length, 'has no id twice');
  demand(
    references.every((id) => ids.includes(id)),
    'refers to nothing outside',
  );
  demand(!/NaN|Infinity|undefined|\u26A0/.test(svg), 'has no broken number');
  demand(!/\d\.\d{3}/.test(svg.replaceAll(/<text[^>]*>[^<]*/g, '')), 'has no more than two decimals');
  for (const { text, size, left, right, y } of placedTexts(svg)) {
    demand(size >= 13.5, `"${text}" is at least 13.5 px`);
    demand(left >= -0.1 && right <= width + 0.1, `"${text}" lies within the width`);
    demand(y <= height, `"${text}" lies within the height`);
  }
  return [...broken, ...collisions(svg).map((pair) => `texts stay apart: ${pair}`)];
};
