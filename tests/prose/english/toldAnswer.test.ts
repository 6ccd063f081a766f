import { expect, test } from 'vitest';
import { answerInList, toldAnswers } from '../../../src/prose/english/toldAnswer.ts';
import { metricOf, pairOf, tellingFor } from '../tellings.ts';

/** Alder ahead of Cedar for sure; Birch can be told from neither. */
const metric = metricOf(
  { metric: 'carry', verdict: 'clear' },
  {
    pairs: [
      pairOf({ metric: 'carry', verdict: 'too-close', overlays: ['one-hitter'], pair: { a: 'a', b: 'b' } }),
      pairOf({
        metric: 'carry',
        verdict: 'clear',
        overlays: ['one-hitter'],
        pair: { a: 'a', b: 'c', ahead: 'a' },
      }),
      pairOf({
        metric: 'carry',
        verdict: 'too-close',
        overlays: ['one-hitter'],
        pair: { a: 'b', b: 'c', ahead: 'b' },
      }),
    ],
  },
);
const telling = tellingFor([metric]);

test('a list has every sentence of an answer: the leader is never told without those level with it', () => {
  const [told] = toldAnswers(telling);
  expect(told?.alone.length).toBeGreaterThan(1);
  const inList = answerInList(telling);
  for (const sentence of told?.alone ?? []) expect(inList).toContain(sentence);
  expect(inList).toMatch(/Birch/);
  expect(inList).toMatch(/[.] [A-Z]/);
});

test('where nothing was judged a list says so', () => {
  expect(
    answerInList(tellingFor([metricOf({ metric: 'carry', verdict: 'clear' }, { role: 'exploratory' })])),
  ).toBe('Nothing was judged.');
});

test('each of two main measures has its own cautions', () => {
  const carry = metricOf({ metric: 'carry', verdict: 'clear', overlays: ['few-shots'] });
  const spin = metricOf({ metric: 'spin_rate', verdict: 'clear' });
  const told = toldAnswers(tellingFor([carry, spin]));
  expect(told.map(({ metric: id, cautions }) => [id, cautions.length])).toEqual([
    ['carry', 1],
    ['spin_rate', 0],
  ]);
});
