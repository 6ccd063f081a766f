import { expect, test } from 'vitest';
import { withAndWithout } from '../../src/prose/exclusionSentences.ts';
import { around, reportOf } from '../findings/reportOf.ts';

type Invented = Parameters<typeof reportOf>[0];

const told = (invented: Invented): (string | null)[] => {
  const { telling, findings } = reportOf(invented);
  const [metric] = findings.metrics;
  return metric === undefined ? [] : metric.pairs.map((pair) => withAndWithout(pair, metric, telling));
};

const leaveOut = (...numbers: readonly number[]): Readonly<Record<string, string>> => ({
  contenders:
    '{alder: {label: Alder, supplied_by: us, sold_here: new}, birch: {label: Birch, supplied_by: us, sold_here: new}}',
  exclusions: `[${numbers.map((shot) => `{contender: alder, shot: ${shot}, rule: misread, reason: no spin}`).join(', ')}]`,
});

test('the answer turns with the shots that were left out: both are said, the one with all shots first', () => {
  const shots = { 'Carry (yd)': { alder: [...around(238, 0.5).slice(0, 11), 170], birch: around(230, 0.5) } };
  expect(told({ shots, front: leaveOut(23) })).toEqual([
    'With all shots counted: Alder or Birch: cannot tell. 15 yards farther with Alder to 10 with Birch would fit. ' +
      'With one left out: Alder clearly farther than Birch. About 8 yards; 6 to 10 would fit. The answer depends on what was left out.',
  ]);
});

test('the answer stays: said once, with both figures', () => {
  const shots = { 'Carry (yd)': { alder: around(245, 0.5), birch: around(230, 0.5) } };
  expect(told({ shots, front: leaveOut(1, 3) })).toEqual([
    'With all shots counted: Alder clearly farther than Birch. About 15.0 yards; 13.0 to 17.0 would fit. ' +
      'With two left out the answer is the same. About 15.2 yards; 13.2 to 17.1 would fit.',
  ]);
});

test('a pair that nothing was left out of is spoken of only where its answer turns', () => {
  const front = { exclusions: '[{contender: alder, shot: 1, rule: misread, reason: no spin}]' };
  expect(told({ front }).map((words) => words === null)).toEqual([false, false, true]);
});

test('nothing left out, nothing said', () => {
  expect(told({})).toEqual([null, null, null]);
});
