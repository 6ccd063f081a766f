import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { answerWords, quoted } from '../../src/prose/english/answerWords.ts';
import { statusTable } from '../../src/prose/english/method/statusTable.ts';
import { answers } from '../../src/prose/english/method/answers.ts';
import { glossary } from '../../src/prose/glossary.ts';
import { isExample } from '../structure/exampleFiles.ts';

const table = 'prose/english/answerWords.ts';

const sources = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.(ts|astro)$/.test(file) && !isExample(resolve('src', file)))
  .map((file) => ({ file, text: readFileSync(join('src', file), 'utf8') }));

describe('an answer is worded in one file', () => {
  test.each(Object.values(answerWords).map(({ title }) => title))('%s', (title) => {
    const holding = sources.filter(({ text }) =>
      [`'${title}'`, `"${title}"`].some((literal) => uncommented(text).includes(literal)),
    );
    expect(holding.map(({ file }) => file)).toEqual([table]);
  });
});

/** Without whole lines of comments, which may give examples. */
function uncommented(text: string): string {
  return text.replaceAll(/^\s*(?:\/\/|\/?\*).*$/gm, '');
}

describe('the method page', () => {
  test('names every answer in its table', () => {
    const named = new Set(statusTable('yards').rows.map(([status]) => status));
    for (const { title } of Object.values(answerWords)) expect(named).toContain(title);
    expect(named).toContain(`${answerWords.clear.title}, first look`);
  });

  test('quotes answers as they are printed', () => {
    const text = JSON.stringify(answers.blocks({ system: 'yards', distance: String }));
    expect(JSON.parse(text)).toBeInstanceOf(Array);
    expect(text).toContain(JSON.stringify(quoted('cause-unclear')).slice(1, -1));
  });

  test('gives whole sentences as examples', () => {
    for (const [, , example] of statusTable('metres').rows) expect(example).toMatch(/^[A-Z].*\.$/);
  });
});

test('the glossary has the term as it is printed', () => {
  expect(glossary.map(({ term }) => term)).toContain(answerWords['cannot-tell'].title);
});
