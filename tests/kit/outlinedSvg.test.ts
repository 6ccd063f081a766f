import { expect, test } from 'vitest';
import { outlinedSvg } from '../../src/kit/outlinedSvg.ts';

const outlines =
  '<svg width="200" height="100" viewBox="0 0 200 100" xmlns="http://www.w3.org/2000/svg">\n    <path fill="#1d2125" d="M 31.277 35.266 Q 29.339 -0.004 27.895002 34 Z"/>\n</svg>\n';

test('outlines get their width on paper, title and description, and fewer digits', () => {
  expect(outlinedSvg(outlines, { title: 'A & B', alt: 'A <wide>.', widthMm: 180 })).toBe(
    '<svg xmlns="http://www.w3.org/2000/svg" width="180mm" height="90mm" viewBox="0 0 200 100" role="img" aria-labelledby="print-title print-desc">' +
      '<title id="print-title">A &amp; B</title><desc id="print-desc">A &lt;wide&gt;.</desc>' +
      '<path fill="#1d2125" d="M31.27 35.26Q29.33 -0.00 27.89 34Z"/></svg>\n',
  );
});

test('outlines without a size are refused', () => {
  expect(() => outlinedSvg('<svg></svg>', { title: '', alt: '', widthMm: 180 })).toThrow('have no size');
});
