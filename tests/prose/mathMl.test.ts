import { parse } from 'parse5';
import { describe, expect, test } from 'vitest';
import { mathMl } from '../../src/prose/mathMl.ts';

const inside = (formula: string): string =>
  mathMl(formula)
    .replace(/^<math display="block"><mrow>/, '')
    .replace(/<\/mrow><\/math>$/, '');

describe('a formula in MathML', () => {
  test.each([
    ['d', '<mi mathvariant="normal">d</mi>'],
    ['0.95', '<mn>0.95</mn>'],
    ['a − b', '<mi mathvariant="normal">a</mi><mo>−</mo><mi mathvariant="normal">b</mi>'],
    ['a < b', '<mi mathvariant="normal">a</mi><mo>&lt;</mo><mi mathvariant="normal">b</mi>'],
    ['m_a', '<msub><mi mathvariant="normal">m</mi><mi mathvariant="normal">a</mi></msub>'],
    ['s^2', '<msup><mi mathvariant="normal">s</mi><mn>2</mn></msup>'],
    ['u_a^2', '<msubsup><mi mathvariant="normal">u</mi><mi mathvariant="normal">a</mi><mn>2</mn></msubsup>'],
    [
      'x_{n − 1}',
      '<msub><mi mathvariant="normal">x</mi><mrow><mi mathvariant="normal">n</mi><mo>−</mo><mn>1</mn></mrow></msub>',
    ],
    [
      '\\frac{a}{n}',
      '<mfrac><mrow><mi mathvariant="normal">a</mi></mrow><mrow><mi mathvariant="normal">n</mi></mrow></mfrac>',
    ],
    ['\\sqrt{2}', '<msqrt><mrow><mn>2</mn></mrow></msqrt>'],
    ['\\abs{x}', '<mrow><mo>|</mo><mi mathvariant="normal">x</mi><mo>|</mo></mrow>'],
    ['\\ln c', '<mi>ln</mi><mi mathvariant="normal">c</mi>'],
    ['\\text{the rest of it }', '<mtext>the rest of it\u00a0</mtext>'],
  ])('%s', (formula, expected) => {
    expect(inside(formula)).toBe(expected);
  });

  test('is well formed: a parser of pages finds the same elements again', () => {
    const html = mathMl('w^2 = \\frac{s_a^2}{n_a} + \\sqrt{\\abs{x}}');
    const names: string[] = [];
    JSON.stringify(parse(html), (key, value: unknown) => {
      if (key === 'tagName' && typeof value === 'string') names.push(value);
      return key === 'parentNode' ? undefined : value;
    });
    const opened = [...html.matchAll(/<(m\w+)/g)].map(([, name]) => name);
    expect(names.filter((name) => name.startsWith('m'))).toEqual(opened);
    expect([...html.matchAll(/<\/(m\w+)/g)]).toHaveLength(opened.length);
  });

  test.each(['\\frac{a}{b', 'a}', '\\frac{a}', 'x_', '\\text{a'])('%s is refused', (formula) => {
    expect(() => mathMl(formula)).toThrow(formula);
  });
});
