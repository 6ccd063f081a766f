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

/** Throws if an attribute or a text holds what only a mistake can put there. */
const refuseBroken = (svg: Element): void => {
  for (const element of [svg, ...svg.querySelectorAll('*')]) {
    for (const { name, value } of element.attributes) {
      if (/NaN|undefined|Infinity/.test(value)) {
        throw new Error(`The chart has a broken number: <${element.tagName.toLowerCase()} ${name}="${value}">.`);
      }
    }
  }
  const text = svg.textContent ?? '';
  const broken =
    /\b(?:NaN|undefined)\b/.exec(text)?.[0] ?? (text.includes(warningSign) ? warningSign : undefined);
  if (broken !== undefined) throw new Error(`The chart has the text "${broken}", which no chart may show.`);
};

/** Gives every id, and every reference to it, the prefix and a number in order of appearance. */
const renumberIds = (svg: Element, prefix: string): void => {
  const fresh = new Map<string, string>();
  for (const element of svg.querySelectorAll('[id]')) {
    const renamed = `${prefix}-${fresh.size + 1}`;
    if (fresh.has(element.id)) throw new Error(`The chart uses the id "${element.id}" twice.`);
    fresh.set(element.id, renamed);
    element.id = renamed;
  }
  const renamed = (id: string): string => {
    const name = fresh.get(id);
    if (name === undefined) throw new Error(`The chart refers to "#${id}", which is not in it.`);
    return name;
  };
  for (const element of svg.querySelectorAll('*')) {
    for (const { name, value } of [...element.attributes]) {
      if (value.includes('url(#')) {
        element.setAttribute(
          name,
          value.replaceAll(/url\(#([^)]+)\)/g, (_, id: string) => `url(#${renamed(id)})`),
        );
      } else if (/^(?:xlink:)?href$/.test(name) && value.startsWith('#')) {
        element.setAttribute(name, `#${renamed(value.slice(1))}`);
      }
    }
  }
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
  for (const element of [svg, ...svg.querySelectorAll('*')]) {
    for (const attribute of [...element.attributes]) {
      if (attribute.name === 'style' || attribute.name.startsWith('aria-'))
        element.removeAttribute(attribute.name);
      else if (/\d/.test(attribute.value) && attribute.name !== 'id') {
        element.setAttribute(attribute.name, rounded(attribute.value, places.has(attribute.name) ? 1 : 2));
      }
    }
  }
  refuseBroken(svg);
  renumberIds(svg, prefix);

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
