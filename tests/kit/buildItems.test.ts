import { expect, test } from 'vitest';
import { heldParts } from '../../src/kit/buildItems.ts';

const held = {
  head: 'one forged 5-iron',
  loft: '26°',
  shaft: 'one 95 g steel shaft',
  length: '38 in',
  grip: 'one grip',
  ball: 'one new model',
  tee: 'mat',
  also: { sleeve: 'none' },
} as const;

test.each([
  ['ball', ['ball'], ['head', 'loft', 'shaft', 'length', 'grip', 'also']],
  ['head', ['head', 'loft'], ['shaft', 'length', 'grip', 'also']],
  ['grooves', ['head', 'loft'], ['shaft', 'length', 'grip', 'also']],
  ['shaft', ['shaft', 'length'], ['head', 'loft', 'grip', 'also']],
  ['length', ['shaft', 'length'], ['head', 'loft', 'grip', 'also']],
  ['grip', ['grip'], ['head', 'loft', 'shaft', 'length', 'also']],
  ['club', ['head', 'loft', 'shaft', 'length', 'grip', 'also'], []],
] as const)(
  'of a test of %s only items of its kind are its own, and no ball or tee is what it was hit with',
  (varied, own, hitWith) => {
    const parts = heldParts(held, varied);
    expect(Object.keys(parts.own)).toEqual(own);
    expect(Object.keys(parts.hitWith)).toEqual(hitWith);
  },
);
