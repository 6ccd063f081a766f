import { escapeXml } from '../prose/escapeXml.ts';

const namespace = 'http://www.w3.org/2000/svg';

/** Attributes that hold places; a tenth of a pixel is finer than any screen. The rest keep two decimals. */
const places = new Set(['d', 'points', 'transform', 'x', 'y', 'x1', 'x2', 'y1', 'y2', 'cx', 'cy']);

const rounded = (value: string, decimals: number): string =>
  value.replaceAll(/-?\d*\.\d+(?:e[-+]?\d+)?|-?\d+e[-+]?\d+/g, (number) => {
    const factor = 10 ** decimals;
    // Halves go up whatever their last digit, so that a place comes out alike from yards and from metres. Adding 0
    // turns minus zero into zero.
    return String(Math.round(Number(number) * factor + 1e-6) / factor + 0);
  });

const warningSign = '\u26A0';

/** Throws if a text holds what only a mistake can put there. */
const refuseBrokenText = (text: string): void => {
  const broken =
    /\b(?:NaN|undefined)\b/.exec(text)?.[0] ?? (text.includes(warningSign) ? warningSign : undefined);
  if (broken !== undefined) throw new Error(`The chart has the text "${broken}", which no chart may show.`);
};

/** An element and all in it, in the order of the text; styles are left out. */
const withDescendants = (element: Element): readonly Element[] => [
  element,
  ...elementsIn(element).flatMap(withDescendants),
];

const elementsIn = (element: Element): readonly Element[] => {
  const found: Element[] = [];
  for (let child = element.firstElementChild; child !== null; child = child.nextElementSibling)
    if (child.localName !== 'style') found.push(child);
  return found;
};

/** A new name for every id: the prefix and a number in order of appearance. Throws if an id occurs twice. */
const freshIds = (elements: readonly Element[], prefix: string): ReadonlyMap<string, string> => {
  const fresh = new Map<string, string>();
  for (const { id } of elements) {
    if (id === '') continue;
    if (fresh.has(id)) throw new Error(`The chart uses the id "${id}" twice.`);
    fresh.set(id, `${prefix}-${fresh.size + 1}`);
  }
  return fresh;
};

/** What an attribute becomes; null takes it away. Throws on a broken number and on a reference to nothing. */
const cleanValue = (
  name: string,
  value: string,
  tag: string,
  ids: ReadonlyMap<string, string>,
): string | null => {
  if (name === 'style' || name.startsWith('aria-')) return null;
  if (/NaN|undefined|Infinity/.test(value)) {
    throw new Error(`The chart has a broken number: <${tag} ${name}="${value}">.`);
  }
  const renamed = (id: string): string => {
    const fresh = ids.get(id);
    if (fresh === undefined) throw new Error(`The chart refers to "#${id}", which is not in it.`);
    return fresh;
  };
  if (name === 'id') return renamed(value);
  if (name.endsWith('href') && value.startsWith('#')) return `#${renamed(value.slice(1))}`;
  if (value.includes('url(#')) {
    return value.replaceAll(/url\(#([^)]+)\)/g, (_, id: string) => `url(#${renamed(id)})`);
  }
  return value.includes('.') || value.includes('e-') ? rounded(value, places.has(name) ? 1 : 2) : value;
};

/** Characters XML 1.0 does not allow in any document. */
// eslint-disable-next-line no-control-regex
const unprintable = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/g;

/** What the root has besides what Plot gives it; Plot's type is ours nowhere. */
const rootAttributes = {
  xmlns: namespace,
  role: 'img',
  'font-family': "'Source Sans 3', system-ui, sans-serif",
  'font-size': '14',
} as const;

type Attributes = readonly (readonly [name: string, value: string])[];

const tag = (name: string, attributes: Attributes, inner: string): string => {
  const start = [name, ...attributes.map(([key, value]) => `${key}="${escapeXml(value)}"`)].join(' ');
  return inner === '' ? `<${start}/>` : `<${start}>${inner}</${name}>`;
};

const cleanAttributes = (element: Element, ids: ReadonlyMap<string, string>): Attributes =>
  Array.from(element.attributes).flatMap(({ name, value }) => {
    const clean = cleanValue(name, value, element.localName, ids);
    return clean === null ? [] : [[name, clean] as const];
  });

const written = (element: Element, ids: ReadonlyMap<string, string>): string =>
  tag(element.localName, cleanAttributes(element, ids), inside(element, ids));

/** Words, or elements: what Plot draws has either. */
const inside = (element: Element, ids: ReadonlyMap<string, string>): string =>
  element.firstElementChild === null
    ? escapeXml(element.textContent ?? '')
    : elementsIn(element)
        .map((child) => written(child, ids))
        .join('');

/**
 * The text of what Plot drew for a page with a strict content policy and for files: no styles, no inner labels, one image with
 * a name, ids by prefix, rounded numbers. Throws if Plot drew more than an SVG, or something broken.
 */
export const cleanSvg = (
  svg: Element,
  { prefix, name }: { readonly prefix: string; readonly name: string },
): string => {
  if (svg.localName !== 'svg')
    throw new Error('A chart is one SVG; this one came with a legend or a heading.');
  refuseBrokenText(svg.textContent ?? '');
  const ids = freshIds(withDescendants(svg), prefix);
  const title = `${prefix}-name`;
  const attributes = {
    ...Object.fromEntries(cleanAttributes(svg, ids)),
    ...rootAttributes,
    'aria-labelledby': title,
  };
  const named = tag('title', [['id', title]], escapeXml(name));
  return tag('svg', Object.entries(attributes), named + inside(svg, ids)).replaceAll(unprintable, '');
};
