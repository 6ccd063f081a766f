import { escapeXml } from '../prose/escapeXml.ts';
import { svgNamespace, type AttributeValue, type DrawingElement } from './drawingDocument.ts';
import { roundedNumber, roundedNumbers } from './roundedNumbers.ts';

/** Attributes that hold places; a tenth of a pixel is finer than any screen. The rest keep two decimals. */
const places = new Set(['d', 'points', 'transform', 'x', 'y', 'x1', 'x2', 'y1', 'y2', 'cx', 'cy']);

const decimalsOf = (name: string): 1 | 2 => (places.has(name) ? 1 : 2);

const warningSign = '\u26A0';

/** Throws if a text holds what only a mistake can put there. */
const refuseBrokenText = (text: string): void => {
  const broken =
    /\b(?:NaN|undefined)\b/.exec(text)?.[0] ?? (text.includes(warningSign) ? warningSign : undefined);
  if (broken !== undefined) throw new Error(`The chart has the text "${broken}", which no chart may show.`);
};

/** Ids of a drawing and what they become. */
type FreshIds = Map<string, string>;

/** Gives every id a new name: the prefix and a number in order of appearance. Throws if an id occurs twice. */
const collectIds = (element: DrawingElement, prefix: string, fresh: FreshIds): void => {
  const id = element.getAttribute('id');
  if (id !== null && id !== '') {
    if (fresh.has(id)) throw new Error(`The chart uses the id "${id}" twice.`);
    fresh.set(id, `${prefix}-${fresh.size + 1}`);
  }
  for (const child of element.children) if (child.localName !== 'style') collectIds(child, prefix, fresh);
};

const renamed = (id: string, ids: FreshIds): string => {
  const fresh = ids.get(id);
  if (fresh === undefined) throw new Error(`The chart refers to "#${id}", which is not in it.`);
  return fresh;
};

const refuseBrokenNumber = (name: string, value: AttributeValue, tag: string): never => {
  throw new Error(`The chart has a broken number: <${tag} ${name}="${value}">.`);
};

/** What has to be looked at in a value: a point or `e-` of a number, a reference, what is escaped, words of broken numbers. */
const noteworthy = /[.#&<>"NIu]|e-/;

/** An attribute's value as it is written. Throws on a broken number and on a reference to nothing. */
const cleanValue = (name: string, value: AttributeValue, tag: string, ids: FreshIds): string => {
  if (name === 'id') return escapeXml(renamed(String(value), ids));
  if (typeof value === 'number')
    return Number.isFinite(value)
      ? roundedNumber(value, decimalsOf(name))
      : refuseBrokenNumber(name, value, tag);
  if (!noteworthy.test(value)) return value;
  if (/NaN|undefined|Infinity/.test(value)) refuseBrokenNumber(name, value, tag);
  if (name.endsWith('href') && value.startsWith('#')) return escapeXml(`#${renamed(value.slice(1), ids)}`);
  if (value.includes('url(#')) {
    return escapeXml(value.replaceAll(/url\(#([^)]+)\)/g, (_, id: string) => `url(#${renamed(id, ids)})`));
  }
  return escapeXml(roundedNumbers(value, decimalsOf(name)));
};

const isStyling = (name: string): boolean => name === 'style' || name.startsWith('aria-');

const cleanAttributes = ({ attributes, localName }: DrawingElement, ids: FreshIds): string => {
  let written = '';
  for (const [name, value] of attributes)
    if (!isStyling(name)) written += ` ${name}="${cleanValue(name, value, localName, ids)}"`;
  return written;
};

/** Elements, or words: what Plot draws has either. Styles are left out. */
const inside = ({ words, children }: DrawingElement, ids: FreshIds): string => {
  if (words !== '') refuseBrokenText(words);
  if (children.length === 0) return escapeXml(words);
  let written = '';
  for (const child of children) if (child.localName !== 'style') written += cleanElement(child, ids);
  return written;
};

const cleanElement = (element: DrawingElement, ids: FreshIds): string => {
  const start = element.localName + cleanAttributes(element, ids);
  const within = inside(element, ids);
  return within === '' ? `<${start}/>` : `<${start}>${within}</${element.localName}>`;
};

/** Characters XML 1.0 does not allow in any document. */
// eslint-disable-next-line no-control-regex
const unprintable = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/g;

/** Attributes of the root that Plot does not set, or sets to something else; none of Plot's own typography is kept. */
const rootAttributes = {
  xmlns: svgNamespace,
  role: 'img',
  'font-family': "'Source Sans 3', system-ui, sans-serif",
  'font-size': '14',
} as const;

/**
 * The text of what Plot drew for a page with a strict content policy and for files: no styles, no inner labels, one image with
 * a name, ids by prefix, rounded numbers. The drawing itself gets the root's attributes. Throws if Plot drew something broken.
 */
export const cleanSvg = (
  svg: DrawingElement,
  { prefix, name }: { readonly prefix: string; readonly name: string },
): string => {
  const ids: FreshIds = new Map();
  collectIds(svg, prefix, ids);
  const title = `${prefix}-name`;
  for (const [key, value] of Object.entries(rootAttributes)) svg.setAttribute(key, value);
  const start = `svg${cleanAttributes(svg, ids)} aria-labelledby="${escapeXml(title)}"`;
  const named = `<title id="${escapeXml(title)}">${escapeXml(name)}</title>`;
  return `<${start}>${named}${inside(svg, ids)}</svg>`.replaceAll(unprintable, '');
};
