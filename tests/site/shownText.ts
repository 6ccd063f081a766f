import { parse, type DefaultTreeAdapterTypes } from 'parse5';

type Node = DefaultTreeAdapterTypes.Node;
type Element = DefaultTreeAdapterTypes.Element;

const silent = new Set(['script', 'style', 'svg', 'template', 'head', 'nav', 'footer', 'math']);
const inline = new Set([
  'a',
  'abbr',
  'b',
  'code',
  'em',
  'i',
  'small',
  'span',
  'strong',
  'sub',
  'sup',
  'time',
  'wbr',
  'button',
]);
const cells = new Set(['td', 'th']);
/** Attributes of what is left out. */
const unseen = new Set(['hidden', 'data-size-of']);

const isElement = (node: Node): node is Element => 'tagName' in node;

/**
 * What a reader of the shop's own units sees of a page, a line a paragraph, headings marked and cells of a row parted
 * by " | "; pictures, navigation, sizes of files and what is hidden left out, folds open.
 */
export function shownText(html: string): string {
  const lines: string[] = [];
  let line = '';
  const end = (): void => {
    const text = line.replace(/\s+/g, ' ').trim();
    if (text !== '') lines.push(text);
    line = '';
  };
  const walk = (node: Node): void => {
    if (node.nodeName === '#text') {
      line += 'value' in node ? node.value : '';
      return;
    }
    if (isElement(node)) {
      if (silent.has(node.tagName) || node.attrs.some(({ name }) => unseen.has(name))) return;
      const heading = /^h([1-6])$/.exec(node.tagName);
      if (heading !== null) {
        end();
        line = `${'#'.repeat(Number(heading[1]))} `;
      } else if (cells.has(node.tagName)) {
        line += line.trim() === '' ? '' : ' | ';
      } else if (!inline.has(node.tagName)) end();
      node.childNodes.forEach(walk);
      if (!inline.has(node.tagName) && !cells.has(node.tagName)) end();
      return;
    }
    if ('childNodes' in node) node.childNodes.forEach(walk);
  };
  walk(parse(html));
  end();
  return `${lines.join('\n')}\n`;
}

/** What a page's head tells machines that share it: title, description, open graph. */
export function sharedText(html: string): string {
  const told: string[] = [];
  const walk = (node: Node): void => {
    if (isElement(node)) {
      const value = (name: string): string => node.attrs.find((one) => one.name === name)?.value ?? '';
      const named = value('property') || value('name');
      if (node.tagName === 'meta' && /^(description|og:(title|description|image:alt))$/.test(named)) {
        told.push(`${named}: ${value('content')}`);
      }
    }
    if ('childNodes' in node) node.childNodes.forEach(walk);
  };
  walk(parse(html));
  return `${told.join('\n')}\n`;
}
