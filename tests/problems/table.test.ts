import { describe, expect, test } from 'vitest';
import { makeProblem } from '../../src/problems/makeProblem.ts';
import { problemsJson } from '../../src/problems/problemsJson.ts';
import { sortProblems } from '../../src/problems/sortProblems.ts';
import { problemTable } from '../../src/problems/table.ts';
import { visible } from '../../src/problems/visible.ts';

const date = makeProblem(
  'value-invalid',
  { file: 'reports/three-heads/report.md', line: 4, column: 7, columnName: 'date' },
  {
    expected: 'a date as year-month-day, such as 2026-04-11',
    found: '2026-02-30',
    cure: 'Write a day that exists.',
  },
);
const title = makeProblem(
  'key-missing',
  { file: 'reports/three-heads/report.md', line: 1, column: 1, columnName: 'title' },
  { expected: 'the title of the report', found: null, cure: 'Add a line "title:" with the answer.' },
);
const noShop = makeProblem(
  'shop-missing',
  { file: 'shop.yaml' },
  { expected: 'a file shop.yaml', found: null, cure: 'Write one.' },
);
const cell = makeProblem(
  'not-a-number',
  { file: 'reports/three-heads/shots.csv', line: 12, column: 3, columnName: 'Carry' },
  { expected: 'a number', found: '', cure: 'Put the number in.' },
);
const plain = { colour: false, width: 80 };

test('the table names file, line, column, what was expected, what stands there and what to do', () => {
  expect(problemTable([cell, noShop, date, title], plain)).toBe(
    `3 errors and 1 warning, each at file:line:column

reports/three-heads/report.md:1:1  title
  error     A required answer is missing (key-missing)
  expected  the title of the report
  found     nothing
  to do     Add a line "title:" with the answer.

reports/three-heads/report.md:4:7  date
  error     The value cannot be used (value-invalid)
  expected  a date as year-month-day, such as 2026-04-11
  found     2026-02-30
  to do     Write a day that exists.

reports/three-heads/shots.csv:12:3  Carry
  error     Not a number (not-a-number)
  expected  a number
  found     (blank)
  to do     Put the number in.

shop.yaml
  warning   There is no shop.yaml (shop-missing)
  expected  a file shop.yaml
  found     nothing
  to do     Write one.`,
  );
});

test('nothing is printed where there is nothing to say', () => {
  expect(problemTable([], plain)).toBe('');
});

test('long lines are broken at blanks and hang; file names are never broken', () => {
  const file = `reports/${'a-very-long-slug-'.repeat(8)}end/report.md`;
  const words = 'eleven chars '.repeat(12).trim();
  const table = problemTable([{ ...date, file, expected: words, found: 'x'.repeat(100) }], {
    colour: false,
    width: 40,
  });
  const lines = table.split('\n');
  expect(lines).toContain(`${file}:4:7  date`);
  const others = lines.slice(3);
  expect(others.length).toBeGreaterThan(8);
  expect(others.filter((line) => line.length > 40)).toEqual([]);
  expect(others.join(' ').replace(/\s+/g, ' ')).toContain(words);
  expect(others.join('').replace(/\s+/g, '')).toContain('x'.repeat(100));
});

describe('many problems', () => {
  const many = Array.from({ length: 30 }, (_, index) => ({ ...date, line: index + 1 }));
  const warnings = Array.from({ length: 30 }, (_, index) => ({ ...noShop, file: 'a.yaml', line: index + 1 }));

  test('are cut after the first twenty, and the rest counted', () => {
    const table = problemTable(many, { ...plain, howToSeeAll: 'See all with: npm run check' });
    expect(table.match(/report\.md:/g)).toHaveLength(20);
    expect(table).toContain('report.md:20:7');
    expect(table.endsWith('\n\nand 10 errors more. See all with: npm run check')).toBe(true);
  });

  test('never hide an error behind warnings', () => {
    const table = problemTable([...warnings, ...many.slice(0, 2)], plain);
    expect(table.match(/report\.md:/g)).toHaveLength(2);
    expect(table.endsWith('and 12 warnings more.')).toBe(true);
  });

  test('are all printed when asked for', () => {
    expect(problemTable(many, { ...plain, most: null }).match(/report\.md:/g)).toHaveLength(30);
  });
});

test('colour is added only when asked for, and adds nothing but colour', () => {
  const coloured = problemTable([date, noShop], { colour: true, width: 80 });
  // Select Graphic Rendition, ECMA-48 8.3.117: ESC [ ... m; 31 is red, 33 yellow.
  expect(coloured).toContain('\u001b[31merror');
  expect(coloured).toContain('\u001b[33mwarning');
  expect(coloured.replace(/\u001b\[\d+m/g, '')).toBe(problemTable([date, noShop], plain));
  expect(problemTable([date, noShop], plain)).not.toContain('\u001b');
});

describe('hostile text', () => {
  const hostile = {
    ...date,
    file: 'reports/a\u001b[2Jb/report.md',
    columnName: 'da\u202Ete',
    found: 'a\u0007\u001b]0;title\u0007\r\n\u2066b\u200B\uFEFF\u0085',
    cure: `Put it in quotes: "\u202Egnp.exe".`,
  };

  test('shows what cannot be seen and acts on no terminal', () => {
    const table = problemTable([hostile], { colour: false, width: 120 });
    // Cc and Cf of the Unicode Standard (UAX #44): control characters and invisible marks of format.
    expect(table.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}]/u);
    expect(table).toContain('reports/a<U+001B>[2Jb/report.md:4:7  da<U+202E>te');
    expect(table).toContain(
      'a<U+0007><U+001B>]0;title<U+0007><U+000D><U+000A><U+2066>b<U+200B><U+FEFF><U+0085>',
    );
    expect(table).toContain('"<U+202E>gnp.exe"');
  });

  test('is escaped in JSON and means the same there', () => {
    const json = problemsJson([hostile]);
    expect(json.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}]/u);
    expect(JSON.parse(json)).toEqual({
      errors: 1,
      warnings: 0,
      problems: [{ ...hostile, title: 'The value cannot be used' }],
    });
  });

  test('keeps letters of any script, emoji and signs', () => {
    const text = 'Driver 9° – naïve Größe 球 שלום 🏌 ½ “x”';
    expect(visible(text)).toBe(text);
    expect(visible('\ud800')).toBe('<U+D800>');
  });

  test('is shortened when it is very long, and says how long it was', () => {
    const table = problemTable([{ ...date, found: 'y'.repeat(1_000_000) }], plain);
    expect(table.length).toBeLessThan(1_000);
    expect(table.replace(/\s+/g, '')).toContain(`${'y'.repeat(240)}...(1000000characters)`);
  });
});

test('problems are sorted by file, then from the whole file down to line and column', () => {
  const at = (file: string, line: number | null, column: number | null) => ({ ...date, file, line, column });
  const sorted = [
    at('a', null, null),
    at('a', 2, null),
    at('a', 2, 3),
    at('a', 2, 10),
    at('a', 10, 1),
    at('b', 1, 1),
  ];
  expect(sortProblems([...sorted].reverse())).toEqual(sorted);
});

test('words in wide letters hang where others do, and no line is wider than the terminal', () => {
  const found = `${'球桿測試'.repeat(8)} 🏌️‍♀️ ${'Gro\u0308\u00dfe '.repeat(12)}`.trim();
  const lines = problemTable([{ ...date, found }], { colour: false, width: 50 }).split('\n');
  const from = lines.findIndex((line) => line.startsWith('  found'));
  const shown = lines.slice(
    from,
    lines.findIndex((line) => line.startsWith('  to do')),
  );
  expect(shown.length).toBeGreaterThan(3);
  for (const line of shown) expect(line).toMatch(/^ {12}\S|^ {2}found {5}\S/);
  // 38 columns for the text: nineteen wide letters, where 38 of one column would stand.
  expect(shown[0]).toBe(`  found     ${'球桿測試'.repeat(8).slice(0, 19)}`);
});
