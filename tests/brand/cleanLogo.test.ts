import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { cleanLogo } from '../../src/site/brand/cleanLogo.ts';

const svg = (inner: string, attributes = 'viewBox="0 0 40 20"'): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" ${attributes}>${inner}</svg>`;
const shape = '<path d="M0 0h9v9z"/>';

describe('a logo', () => {
  test('of shapes stays as it was drawn', () => {
    const inner =
      '<defs><linearGradient id="g"><stop offset="0" stop-color="#123456"/></linearGradient></defs>' +
      '<style>.a{fill:url(#g)}</style><g class="a" transform="scale(2)"><path d="M0 0h9v9z" style="fill:url(\'#g\')"/></g>' +
      '<use xlink:href="#g"/><text x="1">A &amp; B</text>';
    const found = cleanLogo(`<?xml version="1.0"?>\n<!-- drawn -->\n${svg(inner)}`);
    expect(found?.takenOut).toEqual([]);
    expect(found?.svg).toBe(
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 20" width="40" height="20">' +
        '<defs><linearGradient id="g"><stop offset="0" stop-color="#123456"></stop></linearGradient></defs>' +
        '<style>.a{fill:url(#g)}</style><g class="a" transform="scale(2)"><path d="M0 0h9v9z" style="fill:url(\'#g\')"></path></g>' +
        '<use href="#g"></use><text x="1">A &amp; B</text></svg>\n',
    );
  });

  test('keeps nothing of what drawing programs write for themselves, and says nothing of it', () => {
    const found = cleanLogo(
      '<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "x.dtd" [ <!ENTITY ns "http://ns.example/"> ]>' +
        svg(
          `<metadata><rdf:RDF>Made by a person</rdf:RDF></metadata><sodipodi:namedview id="v"/>${shape}`,
          'viewBox="0 0 4 4" inkscape:version="1" xmlns:x="&ns;" xml:space="preserve"',
        ),
    );
    expect(found?.takenOut).toEqual([]);
    expect(found?.svg).not.toMatch(/ENTITY|person|inkscape|sodipodi|xml:|example/);
  });

  test.each([
    ['<script>alert(1)</script>', 'script'],
    ['<script xlink:href="https://elsewhere.example/x.js"/>', 'script'],
    ['<path d="M0 0" onclick="alert(1)"/>', 'onclick'],
    ['<path d="M0 0" ONLOAD="alert(1)"/>', 'onload'],
    ['<a href="javascript:alert(1)"><path d="M0 0"/></a>', 'a'],
    ['<use href="https://elsewhere.example/x.svg#a"/>', 'href'],
    ['<use xlink:href="data:image/svg+xml;base64,AAAA#a"/>', 'href'],
    ['<image href="https://elsewhere.example/x.png"/>', 'image'],
    ['<image href="data:image/png;base64,AAAA"/>', 'image'],
    ['<foreignObject><iframe src="https://elsewhere.example"></iframe></foreignObject>', 'foreignObject'],
    ['<style>@import "https://elsewhere.example/x.css";</style>', 'style'],
    ['<style>a{background:url(https://elsewhere.example/x)}</style>', 'style'],
    ['<style>a{background:u\\72l(https://elsewhere.example/x)}</style>', 'style'],
    ['<style>@font-face{font-family:x;src:url("//elsewhere.example/x")}</style>', 'style'],
    ['<path d="M0 0" style="fill:url(//elsewhere.example/x#a)"/>', 'style'],
    ['<path d="M0 0" fill="url( \'https://elsewhere.example/x#a\' )"/>', 'fill'],
    ['<path d="M0 0" filter="url(/**/https://elsewhere.example)"/>', 'filter'],
    ['<animate attributeName="href" values="javascript:alert(1)"/>', 'animate'],
    ['<set attributeName="onmouseover" to="alert(1)"/>', 'set'],
    ['<feImage href="https://elsewhere.example/x.png"/>', 'feImage'],
  ])('loses %s, and says so', (evil, name) => {
    const found = cleanLogo(svg(evil + shape));
    expect(found?.takenOut).toEqual([name]);
    expect(found?.svg).not.toMatch(/alert|elsewhere|script|data:|@import|\son/i);
    expect(found?.svg).toContain('d="M0 0h9v9z"');
  });

  test('cannot smuggle anything through another reading of the same text', () => {
    for (const trick of [
      '<style><![CDATA[</style><script>alert(1)</script>]]></style>',
      '<title><![CDATA[</title><script>alert(1)</script>]]></title>',
      '<desc>&lt;script&gt;alert(1)&lt;/script&gt;</desc>',
      '<text>]]&gt;<!-- --><!--><script>alert(1)</script>--></text>',
      '<p><svg onload=alert(1)>',
      '<path d="&quot;/><script>alert(1)</script>"/>',
    ]) {
      const found = cleanLogo(svg(`${shape}${trick}`));
      const { document } = parseHTML(found?.svg ?? '');
      expect(document.querySelectorAll('script, iframe')).toHaveLength(0);
      expect(
        [...document.querySelectorAll('*')]
          .flatMap(({ attributes }) => [...attributes].map(({ name }) => name))
          .filter((name) => name.startsWith('on')),
      ).toEqual([]);
    }
  });

  test.each([
    ['not a drawing', 'Hello'],
    ['a page with a drawing in it', `<html><body>${svg(shape)}</body></html>`.replace('<svg', '<div')],
    ['no size', svg(shape, '')],
    ['a size in parts of nothing', svg(shape, 'width="100%"').replace('100%', '%')],
    ['a size of nothing', svg(shape, 'viewBox="0 0 0 0"')],
    ['nothing drawn', svg('<script>draw()</script>')],
  ])('is none: %s', (_, text) => {
    expect(cleanLogo(text)).toBeNull();
  });

  test('without a viewBox is as large as it says', () => {
    expect(cleanLogo(svg(shape, 'width="30mm" height="10mm"'))).toMatchObject({ width: 30, height: 10 });
  });
});
