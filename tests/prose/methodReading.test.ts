import { describe, expect, test } from 'vitest';
import { fairnessWhy } from '../../src/findings/fairnessWhy.ts';
import { glossary } from '../../src/prose/glossary.ts';
import { methodSections } from '../../src/prose/english/method/methodSections.ts';
import type { MethodBlock } from '../../src/prose/english/method/section.ts';
import { gradeLevel } from './readingLevel.ts';

const most = 8;

const sentencesIn = (text: string): readonly string[] => text.split(/(?<=[.?!]["”]?)\s+(?=["“A-Z])/);
const textsIn = (block: MethodBlock): readonly string[] =>
  typeof block === 'string' ? [block] : 'list' in block ? block.list : block.rows.flat();

describe('the method page in words', () => {
  const told = { system: 'yards', distance: (yards: number) => `${yards} yards` } as const;
  const sections = methodSections.map((section) => ({
    id: section.id,
    sentences: section
      .blocks(told)
      .filter((block) => typeof block === 'string' || 'list' in block)
      .flatMap(textsIn)
      .flatMap(sentencesIn),
  }));

  test.each(sections.filter(({ sentences }) => sentences.length > 2))('$id', ({ sentences }) => {
    expect(gradeLevel(sentences), sentences.join('\n')).toBeLessThanOrEqual(most);
  });

  test('as a whole', () => {
    const all = sections.flatMap(({ sentences }) => sentences);
    expect(all.length).toBeGreaterThan(100);
    expect(gradeLevel(all)).toBeLessThanOrEqual(most);
  });
});

test('the glossary', () => {
  expect(gradeLevel(glossary.flatMap(({ meaning }) => sentencesIn(meaning)))).toBeLessThanOrEqual(most);
});

test('why each check of a fair test matters', () => {
  expect(gradeLevel(Object.values(fairnessWhy))).toBeLessThanOrEqual(most);
});
