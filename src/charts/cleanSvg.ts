const namespace = 'http://www.w3.org/2000/svg';

/** Attributes that hold places; a tenth of a pixel is finer than any screen. The rest keep two decimals. */
const places = new Set(['d', 'points', 'transform', 'x', 'y', 'x1', 'x2', 'y1', 'y2', 'cx', 'cy']);

const rounded = (value: string, decimals: number): string =>
  value.replaceAll(/-?\d*\.\d+(?:e[-+]?\d+)?|-?\d+e[-+]?\d+/g, (number) => {
    const factor = 10 ** decimals;
    // Adding 0 turns minus zero into zero.
    return String(Math.round(Number(number) * factor) / factor + 0);
  });

const warningSign = '\u26A0';

/** Throws if a text holds what only a mistake can put there. */
const refuseBrokenText = (svg: Element): void => {
  const text = svg.textContent ?? '';
  const broken =
    /\b(?:NaN|undefined)\b/.exec(text)?.[0] ?? (text.includes(warningSign) ? warningSign : undefined);
  if (broken !== undefined) throw new Error(`The chart has the text "${broken}", which no chart may show.`);
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

/**
 * Turns what Plot drew into SVG text for a page with a strict content policy and for files: no styles, no inner labels, one image with
 * a name, ids by prefix, rounded numbers. Changes `svg`. Throws if Plot drew more than an SVG, or something broken.
 */
export const cleanSvg = (
  svg: Element,
  { prefix, name }: { readonly prefix: string; readonly name: string },
): string => {
  if (svg.tagName.toLowerCase() !== 'svg')
    throw new Error('A chart is one SVG; this one came with a legend or a heading.');
  for (const style of svg.querySelectorAll('style')) style.remove();
  const elements = [svg, ...svg.querySelectorAll('*')];
  const ids = freshIds(elements, prefix);
  for (const element of elements) {
    for (const { name: attribute, value } of [...element.attributes]) {
      const clean = cleanValue(attribute, value, element.tagName.toLowerCase(), ids);
      if (clean === null) element.removeAttribute(attribute);
      else if (clean !== value) element.setAttribute(attribute, clean);
    }
  }
  refuseBrokenText(svg);

  const title = svg.ownerDocument.createElementNS(namespace, 'title');
  title.id = `${prefix}-name`;
  title.textContent = name;
  svg.prepend(title);
  svg.setAttribute('xmlns', namespace);
  svg.setAttribute('role', 'img');
  svg.setAttribute('aria-labelledby', title.id);
  svg.setAttribute('font-family', "'Source Sans 3', system-ui, sans-serif");
  svg.setAttribute('font-size', '14');
  return svg.outerHTML.replaceAll(unprintable, '');
};
