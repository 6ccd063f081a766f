import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { answerWords, quoted, sayShort } from '../../src/prose/english/answerWords.ts';
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

describe('pairs that share one answer are told as one', () => {
  test.each([
    ['clear', 'all four pairs clearly apart'],
    ['size-uncertain', 'all four pairs apart, size uncertain'],
    ['small', 'all four pairs apart by too little to matter'],
    ['level', 'all four pairs alike'],
    ['cannot-tell', 'none of four pairs can be told apart'],
    ['cause-unclear', 'differences in all four pairs, cause unclear'],
    ['not-confirmed', 'no difference confirmed in four pairs'],
    ['not-judged', 'none of four pairs judged'],
  ] as const)('%s', (status, words) => {
    expect(answerWords[status].ofAll('four')).toBe(words);
  });
});

describe('an answer in short', () => {
  test('says that a clear one is a first look, and of others says nothing of it', () => {
    expect(sayShort({ status: 'clear', firstLook: true })).toBe('Clear difference, first look');
    expect(sayShort({ status: 'clear', firstLook: false })).toBe('Clear difference');
    expect(sayShort({ status: 'level', firstLook: true })).toBe('No difference that matters');
  });
});
