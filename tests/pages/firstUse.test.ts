import { describe, expect, test } from 'vitest';
import { glossary } from '../../src/prose/glossary.ts';
import { helpAtFirstUse } from '../../src/site/firstUse.ts';

const help = (html: string): string => helpAtFirstUse(html, '/glossary/');

/** WCAG 2.2, 3.1.4: a mechanism for identifying the expanded form of abbreviations. */
describe('the first use of an abbreviation', () => {
  test('is written out and linked, the second is not', () => {
    expect(help('<p>At 90 mph, then at 95 mph.</p>')).toBe(
      '<p>At 90 <a href="/glossary/#mph">mph</a> (miles an hour), then at 95 mph.</p>',
    );
  });

  test('is met once in each system of units, and once for both where it stands before them', () => {
    expect(
      help(
        '<p><span data-units="yards">2,900 rpm</span><span data-units="metres">2,900 rpm</span> 1 rpm</p>',
      ),
    ).toBe(
      '<p><span data-units="yards">2,900 <a href="/glossary/#rpm">rpm</a> (revolutions a minute)</span>' +
        '<span data-units="metres">2,900 <a href="/glossary/#rpm">rpm</a> (revolutions a minute)</span> 1 rpm</p>',
    );
    expect(help('<p>1 rpm<span data-units="yards">2 rpm</span></p>')).toContain('units="yards">2 rpm');
  });

  test('is a link alone on the first screen, and written out at the next', () => {
    expect(help('<p data-first-screen>90 mph, 91 mph</p><p>92 mph</p>')).toBe(
      '<p data-first-screen>90 <a href="/glossary/#mph">mph</a>, 91 mph</p>' +
        '<p>92 <a href="/glossary/#mph">mph</a> (miles an hour)</p>',
    );
  });

  test.each([
    ['<h2>90 mph</h2>', 'a heading'],
    ['<p><a href="/x/">90 mph</a></p>', 'a link'],
    ['<svg><title>Speed in mph</title><text>90 mph</text></svg>', 'a chart'],
    ['<div data-authored><p>He <b>swung</b> at 90 mph.</p></div>', 'the words of the shop'],
    ['<p title="90 mph">kmph, mph/s</p>', 'attributes and longer words'],
    ['<!-- 90 mph --><p>none</p>', 'a comment'],
  ])('leaves %s alone: %s', (html) => {
    expect(help(html)).toBe(html);
  });

  test('is still found after an element without an end', () => {
    expect(help('<h2>a<br>b</h2><p>90 mph</p>')).toContain('<a href="/glossary/#mph">mph</a>');
  });
});

describe('heads and captions of tables', () => {
  test('link a word of the trade once, the longest that fits', () => {
    expect(
      help('<table><caption>Launch angle (°)</caption><tr><th scope="col">Spread (sd)</th></tr></table>'),
    ).toBe(
      '<table><caption><a href="/glossary/#launch-angle">Launch angle</a> (°)</caption>' +
        '<tr><th scope="col"><a href="/glossary/#sd">Spread (sd)</a></th></tr></table>',
    );
    const twice = help('<table><caption>Carry</caption></table><table><caption>Carry</caption></table>');
    expect(twice.match(/<a /g)).toHaveLength(1);
  });

  test('rows and cells stay as they are', () => {
    const row = '<table><tr><th scope="row">Carry</th><td>Carry</td></tr></table>';
    expect(help(row)).toBe(row);
  });
});

test('every entry of the glossary has an address of its own', () => {
  const ids = glossary.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids.length).toBeGreaterThan(30);
});
