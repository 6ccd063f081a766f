import { describe, expect, it } from 'vitest';
import { readHeading } from '../../src/intake/shots/heading.ts';
import { roleHeadings } from '../../src/trade/columnRoles.ts';
import { metrics } from '../../src/trade/metrics.ts';

const phrases = Object.values(metrics).flatMap(({ id: metric, headings }) =>
  headings.map((word) => ({ metric, word })),
);
const roles = Object.entries(roleHeadings).flatMap(([role, words]) => words.map((word) => ({ role, word })));
const ambiguous = [...new Set(phrases.map(({ word }) => word))].filter(
  (word) => phrases.filter((phrase) => phrase.word === word).length > 1,
);

describe('the words of the trade', () => {
  it('are ambiguous where the trade is, and nowhere else', () => {
    expect(ambiguous.sort()).toEqual(['angle', 'distance', 'length', 'speed', 'velocity']);
  });

  it('mean one metric each', () => {
    for (const { metric, word } of phrases) {
      if (!ambiguous.includes(word))
        expect(readHeading(word).meaning, word).toEqual({ kind: 'metric', metric });
    }
  });

  it('mean one role each, and never a metric too', () => {
    for (const { role, word } of roles)
      expect(readHeading(word).meaning, word).toEqual({ kind: 'role', role });
  });

  it('are found in any casing and spelling of spaces', () => {
    for (const { metric, word } of phrases) {
      if (ambiguous.includes(word)) continue;
      const spellings = [
        word.toUpperCase(),
        word.replaceAll(' ', '_'),
        word.replaceAll(' ', ''),
        ` ${word} `,
      ];
      for (const spelling of spellings)
        expect(readHeading(spelling).meaning, spelling).toEqual({ kind: 'metric', metric });
    }
  });
});
