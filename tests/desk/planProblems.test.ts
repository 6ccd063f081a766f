import { describe, expect, test } from 'vitest';
import { planProblems } from '../../src/desk/planProblems.ts';
import { makeProblem } from '../../src/problems/makeProblem.ts';

describe('a plan that was not recorded', () => {
  test.each([
    [
      { kind: 'no-order' },
      'No order fits these counts: change the number of shots, or the order. Nothing was written.',
    ],
    [{ kind: 'no-plan' }, 'These answers cannot be written as a plan. Nothing was written.'],
  ] as const)('says why before all else: $0.kind', (refusal, sentence) => {
    expect(planProblems({ kind: 'refused', refusal })).toEqual({
      ofFields: new Map(),
      told: [{ kind: 'refused', sentence, problems: [] }],
    });
  });

  test('hands on what is wrong with the ledger', () => {
    const problem = makeProblem(
      'ledger-invalid',
      { file: 'ledger.json' },
      { found: 'half of it', expected: 'all', cure: 'Take the one of before.' },
    );
    const refusal = { kind: 'ledger-unreadable', problems: [problem] } as const;
    expect(planProblems({ kind: 'refused', refusal }).told).toEqual([
      {
        kind: 'refused',
        sentence: 'The plan could not be put on record. Nothing was written.',
        problems: [problem],
      },
    ]);
  });

  test('says what the disk said', () => {
    expect(planProblems({ kind: 'not-written', why: 'The disk is full (ENOSPC).' }).told).toEqual([
      {
        kind: 'refused',
        sentence: 'The plan cannot be written. The disk is full (ENOSPC). Nothing was written.',
        problems: [],
      },
    ]);
  });

  test('says beside its answer what is wrong with a name', () => {
    const { ofFields, told } = planProblems({
      kind: 'refused',
      refusal: { kind: 'name-taken', name: 'balls', free: 'balls-2' },
    });
    expect(ofFields.get('slug')?.map(({ cure }) => cure)).toEqual([
      'Take another one, such as balls-2, or leave it empty.',
    ]);
    expect(told).toHaveLength(1);
  });
});
