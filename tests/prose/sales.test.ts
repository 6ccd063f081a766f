import { describe, expect, test } from 'vitest';
import { linted, salesReport } from './salesReport.ts';
import { honest, sales } from './salesSentences.ts';

const report = salesReport();
const kindsOf = (sentence: string): string[] => linted(sentence, report).map(({ kind }) => kind);
const silentOn = (sentences: readonly string[]): string[] =>
  sentences.filter((sentence) => kindsOf(sentence).length === 0);
const remarkedOn = (sentences: readonly string[]): string[] =>
  sentences.flatMap((sentence) => {
    const kinds = kindsOf(sentence);
    return kinds.length === 0 ? [] : [`${sentence} (${kinds.join(', ')})`];
  });

describe('sentences that sell', () => {
  test('are sixty-nine, beside sixty that do not', () => {
    expect(new Set([...sales.tuned, ...sales.heldOut]).size).toBe(69);
    expect(new Set([...honest.tuned, ...honest.heldOut]).size).toBe(60);
  });

  test('at least 60 of 69 are remarked on', () => {
    expect(silentOn([...sales.tuned, ...sales.heldOut]).length).toBeLessThanOrEqual(9);
  });
});

test('at most 3 of 60 honest sentences are remarked on', () => {
  expect(remarkedOn([...honest.tuned, ...honest.heldOut]).length).toBeLessThanOrEqual(3);
});
