import { rmSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { typedAnswers } from '../../src/intake/authored/typedAnswers.ts';
import { nothingShared } from '../../src/intake/authored/shared.ts';
import { checkedSite } from '../../src/site/checkedSite.ts';
import { contentFolder, twoHeads } from '../commands/contentFolder.ts';
import { base, report, type Files } from './content.ts';

const withSeen = (
  seen: string,
  paragraph = 'Alder averaged 250 yards. With Birch 300 yards came up.',
): Files => ({
  ...base,
  [report]: `${twoHeads((text) => text.replace(/^status:/m, () => `${seen}status:`))}\n${paragraph}\n`,
});

const problemsOf = (files: Files): string[] => {
  const folder = contentFolder(files);
  try {
    return checkedSite(folder).problems.map(
      ({ severity, kind, columnName, cure }) => `${severity} ${kind} ${columnName ?? ''} ${cure}`,
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};

const kindsOf = (files: Files): string[] => problemsOf(files).map((problem) => problem.split(' ')[1] ?? '');

describe('a warning that was read', () => {
  test('is told while nobody has answered it', () => {
    expect(kindsOf(withSeen(''))).toEqual(['number-differs', 'number-unmatched']);
  });

  test('stays quiet, and only that one', () => {
    expect(kindsOf(withSeen('seen: [{warning: number-unmatched, about: 300 yards}]\n'))).toEqual([
      'number-differs',
    ]);
    expect(kindsOf(withSeen('seen: [{warning: number-unmatched}, {warning: number-differs}]\n'))).toEqual([]);
  });

  test('that is not there any more is told', () => {
    expect(problemsOf(withSeen('seen: [{warning: contest-word, about: crushes}]\n', ''))).toEqual([
      'warning seen-meets-nothing seen[1] Take the entry out of "seen": what it answered is mended, or is worded otherwise.',
    ]);
  });

  test('is never an error', () => {
    const files = withSeen('seen: [{warning: unknown-reference}]\n', '{{ mean spin alder }}');
    expect(kindsOf(files)).toEqual(['unknown-reference']);
  });

  test('has a name that there is', () => {
    expect(problemsOf(withSeen('seen: [{warning: number-wrong}]\n', ''))).toEqual([
      'error value-invalid seen[1].warning Write the name that stands in brackets behind the warning, such as number-unmatched.',
    ]);
  });

  test('changes nothing of what a published report is held to', () => {
    const answers = { title: 'Two heads', varied: 'head' };
    const seen = [{ warning: 'number-unmatched' }];
    expect(typedAnswers({ ...answers, seen }, nothingShared)).toEqual(typedAnswers(answers, nothingShared));
  });
});
