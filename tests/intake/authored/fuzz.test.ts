import fc from 'fast-check';
import { expect, test } from 'vitest';
import { frontAnswers } from '../../../src/intake/authored/front.ts';
import { hiddenIn, isEmptyToTheEye } from '../../../src/intake/authored/hiddenCharacters.ts';
import { foreignLetterIn } from '../../../src/intake/authored/lookAlikes.ts';
import { plainNoun } from '../../../src/intake/authored/plainNoun.ts';
import { readReport } from '../../../src/intake/authored/readReport.ts';
import { readShop } from '../../../src/intake/authored/readShop.ts';
import { readWith } from '../../../src/intake/authored/readWith.ts';
import { file, reportWith, smallest } from './example.ts';

const whole = reportWith({});

/** Text of signs that mean something to YAML. */
const yamlLike = fc.string({
  unit: fc.constantFrom(
    ...'ab1 :\n\t-#{}[],&*!|>\'"%@`?~<=\\',
    '\r\n',
    '\u0000',
    '\u202E',
    '__proto__',
    '---\n',
    ': ',
  ),
  maxLength: 80,
});

const sound = (text: string): void => {
  const { front, problems } = readReport(file, text);
  expect(front === null).toBe(problems.some(({ severity }) => severity === 'error'));
  for (const { line, column, expected, cure } of problems) {
    expect(line).toBeGreaterThanOrEqual(1);
    expect(line).toBeLessThanOrEqual(text.split(/\r\n|\n|\r/).length);
    expect(column).toBeGreaterThanOrEqual(1);
    expect(expected).not.toBe('');
    expect(cure).not.toBe('');
  }
};

test('any text in place of the front matter is read or refused with a place', () => {
  fc.assert(
    fc.property(yamlLike, (text) => sound(`---\n${text}\n---\n`)),
    { numRuns: 1_500 },
  );
});

test('a whole report with something struck out or put in is read or refused with a place', () => {
  const change = fc.tuple(fc.nat({ max: whole.length }), fc.nat({ max: 6 }), yamlLike);
  fc.assert(
    fc.property(change, ([at, removed, added]) =>
      sound(whole.slice(0, at) + added + whole.slice(at + removed)),
    ),
    { numRuns: 500 },
  );
});

test('any text is read as shop.yaml or refused', () => {
  fc.assert(
    fc.property(yamlLike, (text) => {
      const { shop, problems } = readShop('shop.yaml', text);
      expect(shop === null).toBe(problems.some(({ severity }) => severity === 'error'));
    }),
    { numRuns: 500 },
  );
});

test('any text under any key of the front matter survives as typed, or as its noun, or is refused there', () => {
  const keys = fc.constantFrom('title', 'question', 'varied');
  fc.assert(
    fc.property(keys, fc.string({ unit: 'grapheme' }), (key, value) => {
      // JSON strings are YAML double-quoted scalars (YAML 1.2.2, section 1.3).
      const { front, problems } = readReport(file, reportWith({ [key]: JSON.stringify(value) }));
      const misleads = hiddenIn(value) !== null || isEmptyToTheEye(value) || foreignLetterIn(value) !== null;
      if (value.trim() === '' || (key !== 'question' && misleads))
        expect(problems.map(({ columnName }) => columnName)).toEqual([key]);
      else expect(front).toMatchObject({ [key]: key === 'varied' ? plainNoun(value) : value.trim() });
    }),
    { numRuns: 300 },
  );
});

test('answers of any shape are understood or refused, never thrown at', () => {
  const anything = fc.letrec((tie) => ({
    tree: fc.oneof(
      { maxDepth: 4 },
      fc.string(),
      fc.constantFrom('carry', '5 yd', '2026-04-11', 'yes', ''),
      fc.array(tie('tree'), { maxLength: 3 }),
      fc.dictionary(
        fc.constantFrom(...Object.keys(smallest), 'metric', 'label', 'build', '__proto__'),
        tie('tree'),
      ),
    ),
  })).tree;
  fc.assert(
    fc.property(
      fc.dictionary(fc.constantFrom(...Object.keys(smallest), 'claims', 'conditions', 'held'), anything),
      (tree) => {
        const read = readWith<unknown>(frontAnswers, tree);
        for (const { expected } of 'troubles' in read ? read.troubles : []) expect(expected).not.toBe('');
        expect('value' in read || read.troubles.length > 0).toBe(true);
      },
    ),
    { numRuns: 500 },
  );
});
