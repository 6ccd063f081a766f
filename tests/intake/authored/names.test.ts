// Names that readers see: what nobody can see in them, and what looks like something else.
import { describe, expect, test } from 'vitest';
import { hiddenIn, isEmptyToTheEye } from '../../../src/intake/authored/hiddenCharacters.ts';
import { asDrawn, foreignLetterIn } from '../../../src/intake/authored/lookAlikes.ts';
import { readContender } from '../../../src/intake/authored/readContender.ts';
import { readReport } from '../../../src/intake/authored/readReport.ts';
import { contenderMatcher } from '../../../src/intake/contenderNames.ts';
import type { Problem } from '../../../src/problems/problem.ts';
import { twoHeads } from '../../commands/contentFolder.ts';

const line = ({ kind, severity, columnName, expected, found, cure }: Problem): string =>
  [kind, severity, columnName, expected, found, cure].join(' | ');

const problemsOf = (change: (front: string) => string): readonly string[] =>
  readReport('report.md', twoHeads(change)).problems.map(line);

const labelled = (alder: string, birch = 'Birch'): readonly string[] =>
  problemsOf((front) =>
    front
      .replace('label: Alder', `label: ${JSON.stringify(alder)}`)
      .replace('label: Birch', `label: ${JSON.stringify(birch)}`),
  );

describe('a character that nobody can see', () => {
  test.each([
    ['a space of no width', 'Al\u200bder', 'U+200B'],
    ['a joiner between Latin letters', 'Al\u200dder', 'U+200D'],
    ['a non-joiner', 'Al\u200cder', 'U+200C'],
    ['a word joiner', 'Al\u2060der', 'U+2060'],
    ['a soft hyphen', 'Al\u00adder', 'U+00AD'],
    ['a mark of byte order', '\ufeffAlder', 'U+FEFF'],
    ['an override of direction', 'Al\u202eder', 'U+202E'],
    ['an isolate', '\u2066Alder\u2069', 'U+2066'],
    ['a mark of direction in Latin text', 'Alder\u200e', 'U+200E'],
    ['a tag', 'Alder\u{e0041}', 'U+E0041'],
    ['a variation selector alone', 'Alder\ufe0f', 'U+FE0F'],
    ['a letter that was lost', 'B\ufffdr', 'U+FFFD'],
    ['a blank of Braille', 'Al\u2800der', 'U+2800'],
    ['a filler of Hangul', '\u3164', 'U+3164'],
  ])('is found: %s', (_, name, code) => {
    expect(hiddenIn(name)).toBe(code);
  });

  test.each([
    'Birch Max 9°',
    'Tête 9,5',
    'Größe',
    'ヘッド 9',
    'می‌خواهم',
    'क्‍ष',
    'ראש 9\u200f',
    '\u{1f3cc}\u{1f3fd}\u200d\u2642\ufe0f driver',
    '\u26f3\ufe0f ball',
    '№ 1',
  ])('is none in %s', (name) => {
    expect(hiddenIn(name)).toBeNull();
    expect(isEmptyToTheEye(name)).toBe(false);
  });

  test.each(['\u200b', ' \u00a0', '\u0301', '\u2800\u3164'])('leaves nothing to see: %j', (name) => {
    expect(isEmptyToTheEye(name)).toBe(true);
  });

  test('is an error in label, short name, title and what differs', () => {
    const cure = 'Type it anew; such characters come along when text is copied from elsewhere.';
    expect(labelled('Al\u200bder')).toEqual([
      `control-character | error | contenders.alder.label | the name for readers in characters that can be seen | U+200B | ${cure}`,
    ]);
    expect(labelled('\u0301')).toEqual([
      `control-character | error | contenders.alder.label | the name for readers in characters that can be seen | nothing that can be seen | ${cure}`,
    ]);
    const found = problemsOf((front) =>
      front
        .replace('title: Two heads', 'title: Two\u200bheads')
        .replace('varied: head', 'varied: he\u2060ad')
        .replace('label: Birch', 'label: Birch, short: Bi\u200drch'),
    );
    expect(found.map((each) => each.split(' | ').slice(0, 3).join(' '))).toEqual([
      'control-character error title',
      'control-character error varied',
      'control-character error contenders.birch.short',
    ]);
    const sheet = 'label: "Al\\u200Bder"\nsupplied_by: our stock\nsold_here: new\n';
    expect(readContender('contenders/alder.yaml', sheet).problems.map(({ kind }) => kind)).toEqual([
      'control-character',
    ]);
  });

  test('of a session file keeps no club from its contender', () => {
    const contenderOf = contenderMatcher([
      { id: 'alder', label: 'Alder' },
      { id: 'bear', label: 'B\u00e4r' },
    ]);
    expect(contenderOf('Al\u200bder')).toBe('alder');
    expect(contenderOf('Ba\u0308r')).toBe('bear');
  });
});

describe('a letter that looks like another', () => {
  test.each([
    ['\u0410lder', '\u0410', 'Cyrillic', 'A'],
    ['Ald\u0435r 9°', '\u0435', 'Cyrillic', 'e'],
    ['Birch \u0392ig', '\u0392', 'Greek', 'B'],
    ['Br\u03bfok', '\u03bf', 'Greek', 'o'],
  ])('is named: %j', (name, letter, script, latin) => {
    expect(foreignLetterIn(name)).toMatchObject({ letter, script, latin });
  });

  test.each([
    'Alder',
    'Ольха',
    'Берёза 9°',
    'ΣΗΜΥΔΑ',
    'ヘッド',
    'Alder Ольха',
    'μ-Tour',
    'α9',
    'Tête',
    'Łeb',
  ])('is none in %j', (name) => {
    expect(foreignLetterIn(name)).toBeNull();
  });

  test('is an error with what to type', () => {
    expect(labelled('Ald\u0435r')).toEqual([
      'value-invalid | error | contenders.alder.label | the name for readers in letters that are what they look like | ' +
        'the Cyrillic letter \u0435 (U+0435) in "Ald\u0435r" | ' +
        'Type e on a Latin keyboard in its place, or write the whole word in Cyrillic letters.',
    ]);
    expect(labelled('Ольха', 'Берёза 9°')).toEqual([]);
    expect(labelled('榛の木', '樺')).toEqual([]);
  });

  test('makes two names one', () => {
    expect(labelled('COP 9', '\u0421\u041e\u0420 9')).toEqual([
      'value-invalid | error | contenders.birch.label | a name that no other contender has | ' +
        '\u0421\u041e\u0420 9 beside COP 9, which look the same | Change one of the two; alder goes by that name already.',
    ]);
    expect(labelled('Fine', '\ufb01ne')).toHaveLength(1);
    expect(labelled('Pro', '\uff30\uff52\uff4f')).toHaveLength(1);
    expect(labelled('B\u00e4r', 'Ba\u0308r')).toEqual(
      [
        'value-invalid | error | contenders.birch.label | a name that no other contender has | B\u00e4r | Change one of the two; alder goes by that name already.',
      ].map((text) => text.replace('| B\u00e4r |', '| Ba\u0308r |')),
    );
    expect(asDrawn('\u0410\u0392\ufb02')).toBe('ABfl');
  });

  test.each([
    ['Alder 9', 'Alder 9²'],
    ['Bar', 'Bär'],
    ['Il', 'Ill'],
    ['Alder-9', 'Alder 9'],
    ['Model 1', 'Model I'],
  ])('does not make one of %j and %j', (a, b) => {
    expect(labelled(a, b)).toEqual([]);
  });
});

test('two sheets under one name are an error in the report that lists them', () => {
  const sheet = (id: string, label: string) => ({
    id,
    label,
    suppliedBy: { kind: 'own-stock' as const, stock: null, words: 'our stock' },
    soldHere: 'new' as const,
  });
  const text = twoHeads((front) => front.replace(/contenders:\n.*\n.*\n/, 'contenders: [alder, birch]\n'));
  const read = (label: string): readonly string[] =>
    readReport('report.md', text, {
      shop: null,
      contenders: new Map([
        ['alder', sheet('alder', 'Alder 9')],
        ['birch', sheet('birch', label)],
      ]),
    }).problems.map(line);
  expect(read('Birch 9')).toEqual([]);
  expect(read('alder  9')).toEqual([
    'value-invalid | error | contenders[2].label | a name that no other contender has | alder  9 | Change one of the two; alder goes by that name already.',
  ]);
});
