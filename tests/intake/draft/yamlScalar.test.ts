// Names in session files are anything at all; what a draft says of them must be read back to the letter (YAML 1.2).
import { unseenIn } from '../../../src/intake/authored/unseenCharacters.ts';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readYaml } from '../../../src/intake/authored/yamlText.ts';
import { yamlList, yamlScalar } from '../../../src/intake/draft/yamlScalar.ts';

const odd = [
  '9.0',
  '010',
  '7 Iron, #2',
  "Fitter's 9°: old",
  '- dash',
  '# no comment',
  'yes',
  'null',
  '~',
  '"quoted"',
  '{a: b}',
  '[x]',
  '&anchor',
  '*alias',
  '!tag',
  '| block',
  '> folded',
  '%directive',
  '@at',
  '`tick`',
  'back\\slash',
  '=1+1',
  '__proto__',
  'line\nbreak',
  'tab\there',
  '\u202eright to left',
  '🏌️ wood',
  'é',
  '---',
];

test.each(odd)('%j survives as a value and in a list', (name) => {
  const { tree, problems } = readYaml(
    'report.md',
    `a: ${yamlScalar(name)}\nb: ${yamlList([name, 'x', name])}\n`,
  );
  expect(problems).toEqual([]);
  expect(tree).toEqual({ a: name, b: [name, 'x', name] });
});

test('so does any text that can be written', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', minLength: 1 }), (name) => {
      // Refused in what a shop writes, wherever it stands: no chart could hold it.
      fc.pre(unseenIn(name) === null);
      const { tree, problems } = readYaml('report.md', `a: ${yamlScalar(name)}\nb: ${yamlList([name])}\n`);
      expect(problems).toEqual([]);
      expect(tree).toEqual({ a: name, b: [name] });
    }),
    { numRuns: 500 },
  );
});

test('characters that a report may not hold are left out', () => {
  expect(yamlScalar('Al\u0007der')).toBe('Alder');
});

test('plain names stay without quotes', () => {
  expect(yamlScalar('Alder 9.0° (used)')).toBe('Alder 9.0° (used)');
  expect(yamlScalar("Fitter's: #2")).toBe("'Fitter''s: #2'");
});
