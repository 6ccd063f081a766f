import { dot, plot } from '@observablehq/plot';
import { describe, expect, test } from 'vitest';
import { DrawingDocument, DrawingElement } from '../../src/charts/drawingDocument.ts';

const svg = 'http://www.w3.org/2000/svg';
const made = (name: string): DrawingElement => new DrawingDocument().createElementNS(svg, name);

describe('an element of a drawing', () => {
  test('has attributes in the order in which they were first set, numbers as numbers', () => {
    const element = made('circle');
    element.setAttribute('r', 3);
    element.setAttribute('cx', 1.25);
    element.setAttribute('fill', 'none');
    element.setAttribute('r', 4);
    element.removeAttribute('fill');
    expect([...element.attributes]).toEqual([
      ['r', 4],
      ['cx', 1.25],
    ]);
    expect([element.getAttribute('cx'), element.getAttribute('fill')]).toEqual(['1.25', null]);
  });

  test('takes what is no text for its text, as a path that Plot builds', () => {
    const element = made('path');
    element.setAttribute('d', { toString: () => 'M0,0' });
    expect(element.attributes.get('d')).toBe('M0,0');
  });

  test('has words and children, and new words take the place of both', () => {
    const element = made('text');
    element.textContent = 'Birch ';
    element.appendChild(made('tspan')).textContent = 5;
    expect(element.textContent).toBe('Birch 5');
    element.textContent = null;
    expect([element.textContent, element.children]).toEqual(['', []]);
  });

  test('moves nothing and puts nothing between', () => {
    const [group, circle] = [made('g'), made('circle')];
    group.insertBefore(circle, null);
    expect(group.children).toEqual([circle]);
    expect(() => group.appendChild(circle)).toThrow('<circle> is in the drawing already');
    expect(() => group.insertBefore(made('path'), circle as unknown as null)).toThrow(
      '<path> can only be put at the end of <g>.',
    );
  });

  test('throws when it is asked for what it lacks, or told', () => {
    const element = made('g') as unknown as Record<string, unknown>;
    expect(() => element.querySelector).toThrow('Plot asked for "querySelector" of an element, which');
    expect(() => {
      element.innerHTML = '<b/>';
    }).toThrow('Plot set "innerHTML" of an element, which');
    expect('hasOwnProperty' in element && Object.hasOwn(element, 'localName')).toBe(true);
  });
});

describe('the document of a drawing', () => {
  test('makes SVG alone', () => {
    expect(() => new DrawingDocument().createElementNS('http://www.w3.org/1999/xhtml', 'p')).toThrow(
      'A chart is drawn in SVG alone; <p> is of "http://www.w3.org/1999/xhtml".',
    );
    const document = new DrawingDocument() as unknown as Document;
    expect(() => document.createElement('figure')).toThrow('Plot asked for "createElement" of the document');
  });

  test('is enough for Plot, and a legend or a heading is refused', () => {
    const document = new DrawingDocument() as unknown as Document;
    const marks = [dot([{ x: 1, y: 2 }], { x: 'x', y: 'y' })];
    expect(plot({ document, marks })).toBeInstanceOf(DrawingElement);
    expect(() => plot({ document, marks, title: 'Carry' })).toThrow('"createElement" of the document');
  });

  test('holds what Plot drew: an element for each thing shown, in a group', () => {
    const document = new DrawingDocument() as unknown as Document;
    const spots = [
      { x: 4, y: 1 },
      { x: 7.5, y: 2 },
    ];
    const identity = { type: 'identity', axis: null } as const;
    const marks = [dot(spots, { x: 'x', y: 'y', r: 2 })];
    const drawn: unknown = plot({ document, x: identity, y: identity, marks });
    const groups = drawn instanceof DrawingElement ? drawn.children : [];
    expect(groups.map(({ localName }) => localName)).toEqual(['style', 'g']);
    expect(groups[1]?.children.map(({ localName, attributes }) => [localName, ...attributes])).toEqual([
      ['circle', ['cx', 4], ['cy', 1], ['r', 2]],
      ['circle', ['cx', 7.5], ['cy', 2], ['r', 2]],
    ]);
  });
});
