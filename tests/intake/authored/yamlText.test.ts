import { expect, test } from 'vitest';
import { readYaml } from '../../../src/intake/authored/yamlText.ts';

/** What is wrong, the text, and every problem in full: where | kind | expected | found | to do. */
const cases: readonly (readonly [string, string, readonly string[]])[] = [
  [
    'a tab',
    'a:\n\tb: 1\n',
    [
      '2:1 | yaml-syntax | blanks at the start of the line | (tab)b: 1 | Replace the tab by two blanks; YAML does not allow tabs there.',
    ],
  ],
  [
    'a key written twice',
    'title: x\ntitle: y\n',
    [
      '2:1 | yaml-syntax | each key once in its block | title | Keep one line with "title:" and remove the other, or give it a key of its own.',
    ],
  ],
  [
    'a double quote never closed',
    'title: "Three heads\ndate: x\n',
    [
      '1:8 | yaml-syntax | a closing " for the one that opens here | "Three heads | Write " at the end of the value.',
    ],
  ],
  [
    'a single quote never closed',
    "title: 'Three heads\ndate: x\n",
    [
      "1:8 | yaml-syntax | a closing ' for the one that opens here | 'Three heads | Write ' at the end of the value.",
    ],
  ],
  [
    'an apostrophe inside single quotes',
    "title: 'it's level'\n",
    [
      "1:12 | yaml-syntax | nothing after the quote that closes the value | 'it's level' | Put all of it in quotes: \"it's level\".",
    ],
  ],
  [
    'text after the closing quote',
    'label: "Alder" 9\n',
    [
      '1:16 | yaml-syntax | nothing after the quote that closes the value | "Alder" 9 | Put all of it in quotes: "Alder 9".',
    ],
  ],
  [
    'a colon inside a value',
    'label: Head: nine\n',
    [
      '1:8 | yaml-syntax | a value without ": " in it, or a value in quotes | Head: nine | Put the value in quotes: "Head: nine".',
    ],
  ],
  [
    'a colon inside a value in brackets',
    'alder: {label: 9°, build: 1: 2, sold_here: no}\n',
    [
      '1:27 | yaml-syntax | a value without ": " in it, or a value in quotes | 1: 2 | Put the value in quotes: "1: 2".',
    ],
  ],
  [
    'a label that begins with @',
    'label: @home\n',
    [
      '1:8 | yaml-syntax | a value in quotes, since YAML reads a @ at its start as a sign of its own | @home | Put the value in quotes: "@home".',
    ],
  ],
  [
    'a label that begins with %',
    'label: %d\n',
    [
      '1:8 | yaml-syntax | a value in quotes, since YAML reads a % at its start as a sign of its own | %d | Put the value in quotes: "%d".',
    ],
  ],
  [
    'a label that begins with a backtick',
    'label: `a\n',
    [
      '1:8 | yaml-syntax | a value in quotes, since YAML reads a ` at its start as a sign of its own | `a | Put the value in quotes: "`a".',
    ],
  ],
  [
    'a label that begins with *',
    'label: *star\n',
    [
      '1:8 | yaml-syntax | a value in quotes, since YAML reads a * at its start as a sign of its own | *star | Put the value in quotes: "*star".',
    ],
  ],
  [
    'a label that begins with &',
    'label: &star\n',
    [
      '1:8 | yaml-syntax | a value in quotes, since YAML reads a & at its start as a sign of its own | &star | Put the value in quotes: "&star".',
    ],
  ],
  [
    'a label that begins with !',
    'label: !star\n',
    [
      '1:8 | yaml-syntax | a value in quotes, since YAML reads a ! at its start as a sign of its own | !star | Put the value in quotes: "!star".',
    ],
  ],
  [
    'an alias to an anchor',
    'a: &x [1]\nb: [*x, *x]\n',
    [
      '1:4 | yaml-syntax | a value in quotes, since YAML reads a & at its start as a sign of its own | &x [1] | Put the value in quotes: "&x [1]".',
      '2:5 | yaml-syntax | a value in quotes, since YAML reads a * at its start as a sign of its own | *x | Put the value in quotes: "*x".',
    ],
  ],
  [
    'a value cut by a #',
    'label: 7 Iron, #2\n',
    [
      '1:8 | comment-cuts-value | a value that is read whole: YAML takes everything from a # after a blank for a comment | 7 Iron, #2 | Put the value in quotes: "7 Iron, #2". If a comment is meant, put a blank after its #.',
    ],
  ],
  [
    'a value that is nothing but #2',
    'label: #2\n',
    [
      '1:8 | comment-cuts-value | a value that is read whole: YAML takes everything from a # after a blank for a comment | #2 | Put the value in quotes: "#2". If a comment is meant, put a blank after its #.',
    ],
  ],
  [
    'a value in brackets cut by a #',
    'alder: {label: A #2, sold_here: no}\nb: 1\n',
    [
      '1:16 | comment-cuts-value | a value that is read whole: YAML takes everything from a # after a blank for a comment | A #2 | Put the value in quotes: "A #2". If a comment is meant, put a blank after its #.',
    ],
  ],
  [
    'a comma in a value in brackets',
    'alder: {label: Head, nine, sold_here: no}\n',
    [
      '1:22 | yaml-syntax | a key, a colon and a value | nine | Add a colon and an answer. Inside { } a comma ends a value, so put a value that holds a comma in quotes.',
    ],
  ],
  [
    'a line indented too little',
    'a:\n  b: 1\n c: 2\n',
    [
      '3:1 | yaml-syntax | answers of one block all indented by the same number of blanks | c: 2 | Indent this line exactly like the other answers of its block; only what stands under a key without a value is indented further.',
    ],
  ],
  [
    'a line indented under a value',
    'a: 1\n  b: 2\n',
    [
      '2:1 | yaml-syntax | answers of one block all indented by the same number of blanks | b: 2 | Indent this line exactly like the other answers of its block; only what stands under a key without a value is indented further.',
    ],
  ],
  [
    'a { never closed',
    'a: {b: 1, c: 2\nd: 3\n',
    [
      '1:4 | yaml-syntax | a closing } for the { that opens here | {b: 1, c: 2 | Write } after the last answer inside, on the same line or on an indented one.',
    ],
  ],
  [
    'a [ never closed',
    'a: [1, 2\nd: 3\n',
    [
      '1:4 | yaml-syntax | a closing ] for the [ that opens here | [1, 2 | Write ] after the last answer inside, on the same line or on an indented one.',
    ],
  ],
  [
    'no blank after the colon',
    'title:x\ndate: y\n',
    ['1:1 | yaml-syntax | a blank after the colon | title:x | Write "title: x".'],
  ],
  [
    'no colon',
    'title: x\ndate y\nb: z\n',
    [
      '2:1 | yaml-syntax | a key, a colon, a blank and a value | date y | Write a colon and a blank between key and value; a value that runs over two lines is put in quotes or indented under its key.',
    ],
  ],
  [
    'a list on the line of its key',
    'session: - a.csv\n',
    [
      '1:10 | yaml-syntax | a list with each of its entries on a line of its own | session: - a.csv | Start the list on the next line, or write it in square brackets: [one, two].',
    ],
  ],
  [
    'two commas',
    'session: [a.csv, , b.csv]\n',
    [
      '1:18 | yaml-syntax | an answer between two commas | session: [a.csv, , b.csv] | Remove the surplus comma, or put a value that holds a comma in quotes.',
    ],
  ],
  [
    'brackets as a key',
    '? [a, b]\n: c\n',
    [
      '1:3 | yaml-syntax | a key of plain words before the colon | brackets before the colon | Write a plain word as the key, or put the whole value in quotes.',
    ],
  ],
  [
    'a backslash in double quotes',
    'a: "b\\qc"\n',
    [
      '1:6 | yaml-syntax | no backslash inside double quotes | a: "b\\qc" | Use single quotes (\'...\'), in which a backslash is a backslash.',
    ],
  ],
  [
    'a second block',
    'a: 1\n---\nb: 2\n',
    [
      '2:1 | yaml-syntax | one set of answers | --- | Remove this line of dashes; answers stand in one block.',
    ],
  ],
  [
    'a list',
    '- a\n',
    [
      '1:1 | value-invalid | answers, each as a key, a colon and a value | a list | Write one answer a line, such as "title: Three driver heads, one shaft".',
    ],
  ],
  [
    'text alone',
    'Three heads\n',
    [
      '1:1 | value-invalid | answers, each as a key, a colon and a value | Three heads | Write one answer a line, such as "title: Three driver heads, one shaft".',
    ],
  ],
];

test.each(cases)('%s', (_, text, problems) => {
  const read = readYaml('shop.yaml', text).problems;
  expect(
    read.map(({ line, column, kind, expected, found, cure }) =>
      [`${line}:${column}`, kind, expected, found, cure].join(' | '),
    ),
  ).toEqual(problems);
});

test('ordinary comments, quoted # and glued # are left alone', () => {
  const text = 'a: 7 Iron # the old one\nb: "7 Iron, #2"\nc: 7 Iron#2\n# d: x\ne: |\n  No #2\n';
  const { tree, problems } = readYaml('shop.yaml', text);
  expect(problems).toEqual([]);
  expect(tree).toEqual({ a: '7 Iron', b: '7 Iron, #2', c: '7 Iron#2', e: 'No #2\n' });
});

test('a bomb of aliases is refused before it grows', () => {
  const bomb = ['a: &a [x, x, x, x, x, x, x, x, x]'];
  for (const [from, to] of ['ab', 'bc', 'cd', 'de', 'ef', 'fg', 'gh', 'hi']) {
    bomb.push(`${to}: &${to} [${Array(9).fill(`*${from}`).join(', ')}]`);
  }
  const { tree, problems } = readYaml('shop.yaml', bomb.join('\n'));
  expect(tree).toBeNull();
  expect(problems).toHaveLength(9);
  expect(new Set(problems.map(({ kind }) => kind))).toEqual(new Set(['yaml-syntax']));
});

test.each([
  ['brackets', `a: ${'['.repeat(50_000)}`],
  ['braces', `a: ${'{a: '.repeat(50_000)}`],
  ['blocks', Array.from({ length: 3_000 }, (_, depth) => `${' '.repeat(depth)}a:`).join('\n')],
  ['dashes', `a:\n  ${'- '.repeat(20_000)}x`],
])('%s nested thousands deep end in a problem, not in a crash', (_, text) => {
  const { tree, problems } = readYaml('shop.yaml', text);
  expect(tree).toBeNull();
  expect(problems.length).toBeGreaterThan(0);
  expect(problems.every(({ kind }) => kind === 'yaml-syntax' || kind === 'too-long')).toBe(true);
});

test('a text that is asked for several times in a row is parsed once', () => {
  const first = readYaml('reports/a/report.md', 'title: One');
  expect(readYaml('reports/a/report.md', 'title: One')).toBe(first);
  expect(readYaml('reports/b/report.md', 'title: One').placeOf(['title']).file).toBe('reports/b/report.md');
  expect(readYaml('reports/b/report.md', 'title: Two').tree).toEqual({ title: 'Two' });
});
