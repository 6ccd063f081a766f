import { expect, test } from 'vitest';
import { answerOf } from '../../src/prose/answers.ts';
import { sayAnswer } from '../../src/prose/english/answers.ts';
import { at } from '../../src/stats/at.ts';
import { reportOf } from '../findings/reportOf.ts';

const sayOf = (shots: Readonly<Record<string, readonly number[]>>): string => {
  const { findings, telling } = reportOf({ shots: { 'Carry (yd)': shots } });
  return sayAnswer(answerOf(at(findings.metrics, 0), findings), telling).join(' ');
};

const twelve = (mean: number): readonly number[] =>
  Array.from({ length: 12 }, (_, shot) => mean + ((shot * 5) % 12) - 5.5);

test('three with too few shots are told once, not pair by pair', () => {
  expect(sayOf({ alder: [230, 231, 233], birch: [228, 230, 231], cedar: [235, 231, 236] })).toBe(
    'We did not judge Alder, Birch and Cedar: three shots are too few.',
  );
});

test('those with another number of shots are told apart', () => {
  const told = sayOf({ alder: twelve(230), birch: [228, 230, 231, 232], cedar: [235, 231, 236] });
  expect(told).toContain('We did not judge Cedar: three shots are too few.');
  expect(told).toContain('Birch');
});
