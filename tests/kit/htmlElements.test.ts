import { parse, type DefaultTreeAdapterTypes } from 'parse5';
import { describe, expect, test } from 'vitest';
import {
  attribute,
  endTagOf,
  placeOf,
  placeOfAttribute,
  readPage,
  type ReadPage,
} from '../../src/kit/htmlElements.ts';

type Node = DefaultTreeAdapterTypes.Node;

/** What stands where, of a page as parse5 has it, which reads as browsers do. */
function asBrowsersRead(html: string): ReturnType<typeof told>[] {
  const found: ReturnType<typeof told>[] = [];
  const visit = (node: Node): void => {
    if ('tagName' in node) {
      const { startTag, endTag, attrs } = node.sourceCodeLocation ?? {};
      if (startTag != null)
        found.push({
          name: node.tagName.toLowerCase(),
          startTag: html.slice(startTag.startOffset, startTag.endOffset),
          at: startTag.startOffset,
          endTag: endTag == null ? null : endTag.startOffset,
          attributes: node.attrs.map(({ name, value }) => ({
            name: name.toLowerCase(),
            value,
            at: attrs?.[name.toLowerCase()]?.startOffset ?? attrs?.[name]?.startOffset ?? -1,
          })),
        });
    }
    if ('childNodes' in node) node.childNodes.forEach(visit);
  };
  visit(parse(html, { sourceCodeLocationInfo: true }));
  return found;
}

function told({ html }: ReadPage, element: ReadPage['elements'][number]) {
  const { startTag, endTag, attributes } = element;
  return {
    name: element.tagName,
    startTag: html.slice(startTag.start, startTag.end),
    at: startTag.start,
    endTag: endTag === null || endTag.start === endTag.end ? null : endTag.start,
    attributes: attributes.map(({ name, start }) => ({
      name,
      value: attribute(element, name) ?? '',
      at: start,
    })),
  };
}

const everything = { has: () => true } as unknown as ReadonlySet<string>;

const start = '<!doctype html><html lang="en"><head><title>A &lt;b&gt; &amp; c</title></head><body>';
const end = '</body></html>';

describe('elements stand where browsers find them', () => {
  test.each([
    ['quotes and brackets in values', "<p title=\"a > b <a href='x'>\" data-x='\"'>one</p>"],
    ['values without quotes, and names without values', '<p id=one hidden data-x>one</p ><br/><hr>'],
    ['escaped characters in values', '<a href="/a?b=1&amp;c=2&#38;d&quot;">x</a>'],
    ['comments that look like elements', '<!-- <p>none</p> --><p>one</p><!----><!--><b>x</b>-->'],
    [
      'a drawing, whose elements may close themselves',
      '<svg viewBox="0 0 1 1"><path d="M0"/><title>a</title></svg><p>x</p>',
    ],
    ['a formula', '<math><mi>x</mi><mspace/></math><p>x</p>'],
    ['a script with tags in it', '<script>if (a < b) "<p></p>"</script><p>x</p>'],
    ['capitals', '<P ID="one">x</P><IMG SRC="a.png">'],
    ['text with marks of its own', '<p>1 < 2 & 3 > 2</p>'],
  ])('%s', (_what, body) => {
    const html = `${start}${body}${end}`;
    const page = readPage(html, everything);
    expect(page.elements.map((element) => told(page, element))).toEqual(asBrowsersRead(html));
  });
});

const page = readPage(
  '<main><div class="a"><p><img src="x"></p><img src="y"></div><p></p><div>open<img src="z"></main><!--b--></i>',
  new Set(['main', 'div', 'img']),
);

test('elements of other names are passed over, what is in them is not', () => {
  expect(page.elements.map(({ tagName, parent }) => `${parent?.tagName ?? '-'} ${tagName}`)).toEqual([
    '- main',
    'main div',
    'div img',
    'div img',
    'main div',
    'div img',
  ]);
  expect(page.elements[1]?.children.map((img) => attribute(img, 'src'))).toEqual(['x', 'y']);
  expect(page.comments.map((place) => page.html.slice(place.start, place.end))).toEqual(['<!--b-->']);
});

test('an element whose end is left out has no place; one that needs none has', () => {
  const [, closed, img, , open] = page.elements;
  if (closed === undefined || img === undefined || open === undefined) throw new Error('Six are there.');
  expect(page.html.slice(placeOf(closed).start, placeOf(closed).end)).toMatch(/^<div class.*<\/div>$/);
  expect(page.html.slice(placeOf(img).start, placeOf(img).end)).toBe('<img src="x">');
  expect(page.html.slice(endTagOf(closed).start, endTagOf(closed).end)).toBe('</div>');
  expect(() => placeOf(open)).toThrow('The page leaves out the end of an element: div.');
  expect(() => placeOfAttribute(open, 'id')).toThrow('An element has no id: div.');
});
