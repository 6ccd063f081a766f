import { expect, test } from 'vitest';
import { replaceTexts, type SvgText } from '../../src/kit/svgTexts.ts';
import { drawPixels } from '../../src/site/drawPixels.ts';

function textsOf(svg: string): readonly SvgText[] {
  const found: SvgText[] = [];
  const same = replaceTexts(svg, (text, whole) => {
    found.push(text);
    return whole;
  });
  expect(same).toBe(svg);
  return found;
}

const drawing = (inside: string, size = 'width="200" height="100" viewBox="0 0 200 100"'): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${size}><rect width="200" height="100" fill="#ffffff"/>${inside}</svg>`;

test('a text has what the groups around it say, and its place through all of them', () => {
  const [first, second, third] = textsOf(
    drawing(
      '<g font-size="10" fill="#102030"><path d="M0 0"/><g/><g transform="translate(10,20) scale(2)" text-anchor="end" font-weight="600">' +
        '<text x="3" y="4">A &amp; B</text><g font-family="Literata, serif" font-size="12"><text transform="translate(5,6)">C</text></g></g>' +
        '<text x="1" y="2" fill="#ffffff">D</text></g>',
    ),
  );
  expect(first).toMatchObject({
    words: 'A & B',
    serif: false,
    size: 10,
    weight: 600,
    anchor: 'end',
    fill: '#102030',
    strokeWidth: null,
    x: 3,
    y: 4,
    place: { x: 10, y: 20, scale: 2 },
  });
  expect(second).toMatchObject({ serif: true, size: 12, weight: 600, place: { x: 20, y: 32, scale: 2 } });
  expect(third).toMatchObject({
    weight: 400,
    anchor: 'start',
    fill: '#ffffff',
    place: { x: 0, y: 0, scale: 1 },
  });
});

test.each([
  ['turned', '<g transform="rotate(90)"><text>A</text></g>'],
  ['half seen through', '<g opacity="0.5"><text>A</text></g>'],
  [
    'in a drawing within the drawing',
    '<svg x="10" width="20" height="20" viewBox="0 0 40 40"><text>A</text></svg>',
  ],
  ['cut by an outline', '<text clip-path="url(#c)">A</text>'],
])('the place of one that is %s is not known', (_what, inside) => {
  expect(textsOf(drawing(inside)).map(({ place }) => place)).toEqual([null]);
});

test('in a drawing that is enlarged to its view no place is known', () => {
  const [text] = textsOf(drawing('<text>A</text>', 'width="400" height="200" viewBox="0 0 200 100"'));
  expect(text?.place).toBe(null);
});

/** Left, right, top and bottom of all that is not paper, px. */
function inked(svg: string): readonly number[] {
  const { width, height, rgba } = drawPixels(svg, 400);
  const [xs, ys]: [number[], number[]] = [[], []];
  for (let at = 0; at < width * height; at += 1)
    if ((rgba[at * 4] ?? 255) < 128) {
      xs.push(at % width);
      ys.push(Math.floor(at / width));
    }
  return [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
}

// What is drawn as letters, as shapes or by the renderer itself has the same ink within a pixel.
test.each([
  [
    'as shapes in a drawing within it',
    '<svg width="200" height="100"><text x="40" y="60" font-size="30">Heron</text></svg>',
  ],
  [
    'by the renderer, as it holds more than words',
    '<text x="40" y="60" font-size="30" font-family="Source Sans 3">He<tspan>ron</tspan></text>',
  ],
])('letters stand in the same place %s', (_how, inside) => {
  const plain = inked(drawing('<text x="40" y="60" font-size="30">Heron</text>'));
  expect(plain[0]).toBeGreaterThan(80);
  for (const [at, edge] of inked(drawing(inside)).entries())
    expect(Math.abs(edge - (plain[at] ?? 0))).toBeLessThanOrEqual(1);
});
