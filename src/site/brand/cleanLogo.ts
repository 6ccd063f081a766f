import { defaultTreeAdapter, parseFragment, type DefaultTreeAdapterTypes } from 'parse5';
import { escapeXml } from '../../prose/escapeXml.ts';

type Node = DefaultTreeAdapterTypes.ChildNode;
type Element = DefaultTreeAdapterTypes.Element;

/** A drawing without anything that acts or asks for other files. */
interface CleanedLogo {
  readonly svg: string;
  /** Its own proportions, in any unit. */
  readonly width: number;
  readonly height: number;
  /** Names of what would have been seen or heard of and is not there any more, each once. */
  readonly takenOut: readonly string[];
}

const drawn = new Set(
  (
    'svg g path rect circle ellipse line polyline polygon text tspan title desc defs linearGradient radialGradient stop ' +
    'clipPath mask pattern symbol use style'
  ).split(' '),
);

/** What drawing programs leave in a file for their own use. */
const unseen = (name: string): boolean => name.includes(':') || name === 'metadata';

/** Whether a style or a value asks for nothing but parts of the drawing itself. */
function staysInside(words: string): boolean {
  const plain = words.replace(/\/\*[\s\S]*?\*\//g, '');
  const asks = plain.replaceAll(/url\(\s*(["']?)#[\w.:-]+\1\s*\)/gi, '');
  return !/url\s*\(|@import|@font-face|@namespace|image-set|expression|javascript:|\\|</i.test(asks);
}

/**
 * A drawing as SVG with only what draws: no script, no address but of its own parts, no event, no animation, no picture
 * inside, no text of another language. It is written anew from what a parser of HTML finds in it, so nothing of the
 * file's own syntax is left.
 *
 * @returns null for what holds no drawing or does not say how large it is
 */
export function cleanLogo(text: string): CleanedLogo | null {
  const markup = text.replace(/^\uFEFF/, '').replace(/<!DOCTYPE[^>[]*(?:\[[\s\S]*?\]\s*)?>/i, '');
  const root = parseFragment(markup).childNodes.find(
    (node): node is Element => defaultTreeAdapter.isElementNode(node) && node.tagName === 'svg',
  );
  if (root === undefined) return null;
  const size = sizeOf(root);
  if (size === null) return null;
  const takenOut = new Set<string>();
  const inner = root.childNodes.map((node) => written(node, takenOut)).join('');
  if (!/<(?:path|rect|circle|ellipse|line|polyline|polygon|text|use)\b/.test(inner)) return null;
  const own = attributesOf(root, takenOut).filter(
    ([name]) => !/^(?:width|height|viewBox|xmlns|x|y)$/.test(name),
  );
  const [x, y, width, height] = size;
  const box = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${x} ${y} ${width} ${height}" width="${width}" height="${height}"`;
  return {
    svg: `${box}${own.map(inTag).join('')}>${inner}</svg>\n`,
    width,
    height,
    takenOut: [...takenOut],
  };
}

type Box = readonly [x: number, y: number, width: number, height: number];

function sizeOf(svg: Element): Box | null {
  const value = (name: string): string => svg.attrs.find((one) => one.name === name)?.value.trim() ?? '';
  const box = value('viewBox')
    .split(/[\s,]+/)
    .map(Number);
  const [x = NaN, y = NaN, width = NaN, height = NaN] = box;
  const sides: Box =
    box.length === 4
      ? [x, y, width, height]
      : [0, 0, parseFloat(value('width')), parseFloat(value('height'))];
  return sides.every(Number.isFinite) && sides[2] > 0 && sides[3] > 0 ? sides : null;
}

function written(node: Node, takenOut: Set<string>): string {
  if (defaultTreeAdapter.isTextNode(node)) return inXml(node.value);
  if (!defaultTreeAdapter.isElementNode(node) || unseen(node.tagName)) return '';
  const { tagName: name } = node;
  if (!drawn.has(name)) {
    takenOut.add(name);
    return '';
  }
  if (name === 'style') return styleOf(node, takenOut);
  const inner = node.childNodes.map((child) => written(child, takenOut)).join('');
  return `<${name}${attributesOf(node, takenOut).map(inTag).join('')}>${inner}</${name}>`;
}

function styleOf(node: Element, takenOut: Set<string>): string {
  const css = node.childNodes
    .map((child) => (defaultTreeAdapter.isTextNode(child) ? child.value : ''))
    .join('');
  if (staysInside(css)) return `<style>${inXml(css)}</style>`;
  takenOut.add('style');
  return '';
}

type Attribute = readonly [name: string, value: string];

function attributesOf(node: Element, takenOut: Set<string>): readonly Attribute[] {
  return node.attrs.flatMap(({ name, prefix, value }): readonly Attribute[] => {
    if (name === 'href' && (prefix === undefined || prefix === '' || prefix === 'xlink')) {
      if (/^#[\w.:-]+$/.test(value.trim())) return [['href', value.trim()]];
      takenOut.add('href');
      return [];
    }
    if ((prefix !== undefined && prefix !== '') || !/^[a-z][a-z\d-]*$/i.test(name) || name === 'xmlns')
      return [];
    if (!/^on/i.test(name) && staysInside(value)) return [[name, value]];
    takenOut.add(name);
    return [];
  });
}

const inTag = ([name, value]: Attribute): string => ` ${name}="${inXml(value)}"`;

/** Characters that XML cannot hold are left out. */
function inXml(text: string): string {
  return escapeXml(text.replace(/[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/g, ''));
}
