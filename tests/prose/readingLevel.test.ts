import { describe, expect, test } from 'vitest';
import { checksOf } from '../../src/prose/checks.ts';
import { sayChecks } from '../../src/prose/english/checks.ts';
import { metricIds } from '../../src/trade/metrics.ts';
import { changes, groups } from '../specimen/examples.ts';
import { gradeLevel } from './readingLevel.ts';
import { answerSentences, cautionSentences, chanceSentence, pairSentences, reachSentences } from './said.ts';
import { metricOf, tellingFor, waysToComeOut } from './tellings.ts';

const most = 8;

test('the formula gives the level of a sentence worked out by hand', () => {
  // 6 words, 6 syllables, one sentence: 0.39 x 6 + 11.8 x 1 - 15.59
  expect(gradeLevel(['The cat sat on the mat.'])).toBeCloseTo(-1.45, 10);
  // 5 words, 13 syllables (yes-ter-day e-lev-en gol-fers prac-tised to-geth-er = 3 + 3 + 2 + 2 + 3)
  expect(gradeLevel(['Yesterday eleven golfers practised together.'])).toBeCloseTo(
    0.39 * 5 + (11.8 * 13) / 5 - 15.59,
    10,
  );
});

describe('answers', () => {
  test.each(waysToComeOut)('$name', ({ told, design }) => {
    const metric = metricOf({ metric: 'carry', ...told });
    const sentences = answerSentences(metric, tellingFor([metric], design === undefined ? {} : { design }));
    expect(gradeLevel(sentences), sentences.join(' ')).toBeLessThanOrEqual(most);
  });

  test.each(metricIds)('of %s, all that can come out together', (id) => {
    const sentences = waysToComeOut.flatMap(({ told, design }) => {
      const metric = metricOf({ metric: id, ...told });
      return answerSentences(metric, tellingFor([metric], design === undefined ? {} : { design }));
    });
    expect(gradeLevel(sentences)).toBeLessThanOrEqual(most);
  });

  test.each(groups)('many contenders: $name', ({ metric }) => {
    const sentences = answerSentences(metric, tellingFor([metric]));
    expect(gradeLevel(sentences), sentences.join(' ')).toBeLessThanOrEqual(most);
  });
});

describe('what goes with them', () => {
  const metric = metricOf({ metric: 'carry', verdict: 'too-close', overlays: ['found-too-big'] });
  const telling = tellingFor([metric]);

  test('of every pair by itself', () => {
    const sentences = waysToComeOut.flatMap(({ told }) => {
      const own = metricOf({ metric: 'carry', ...told });
      return pairSentences(own, tellingFor([own]));
    });
    expect(gradeLevel(sentences)).toBeLessThanOrEqual(most);
  });

  test('luck and what the test could see', () => {
    expect(
      gradeLevel([chanceSentence(metric, telling), ...reachSentences(metric, telling)]),
    ).toBeLessThanOrEqual(most);
  });

  test('cautions', () => {
    const all = waysToComeOut
      .flatMap(({ told }) => told.overlays ?? [])
      .concat([
        'depends-on-left-out',
        'rests-on-one-shot',
        'near-device',
        'modelled-reading',
        'mixed-with-swing',
      ]);
    const own = metricOf({ metric: 'carry', verdict: 'clear', overlays: [...new Set(all)] });
    const sentences = cautionSentences(tellingFor([own]));
    expect(sentences.length).toBeGreaterThan(10);
    expect(gradeLevel(sentences)).toBeLessThanOrEqual(most);
  });

  test('would the answer change', () => {
    const sentences = changes.flatMap(({ told, metric: rest = {} }) => {
      const own = metricOf(told, rest);
      const telling = tellingFor([own]);
      return checksOf(own, telling.findings).flatMap((checks) => sayChecks(checks, telling).flat());
    });
    expect(gradeLevel(sentences)).toBeLessThanOrEqual(most);
  });
});
