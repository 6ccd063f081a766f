import { expect, test } from 'vitest';
import { madeReport } from './reportOf.ts';

const problemsOf = (matters: string) =>
  madeReport({ front: { matters } }).problems.filter(({ kind }) => kind === 'matters-unusual');

// The trade's value for carry is 5 yards: a third of it is 1.667, three times it 15.
test.each(['{carry: 50 yd}', '{carry: 16 yd}', '{carry: 0.1 yd}', '{carry: 1.6 yd}'])(
  '%s is unusual',
  (matters) => {
    expect(problemsOf(matters)).toHaveLength(1);
  },
);

test.each(['{carry: 15 yd}', '{carry: 5 yd}', '{carry: 1.7 yd}', '{carry: 4 m}'])('%s is not', (matters) => {
  expect(problemsOf(matters)).toEqual([]);
});

test('says where, what was expected and what to do', () => {
  const [problem] = problemsOf('{carry: 50 yd}');
  expect(problem).toMatchObject({
    severity: 'warning',
    file: 'reports/invented/report.md',
    expected: "a gap in carry between a third of the trade's value and three times it",
    found: '50 yd',
    cure: 'Check number and unit. If it is meant, say in the narrative why; it stands beside the answer with who set it.',
  });
  expect(problem?.line).toBeGreaterThan(1);
});
