import type { PrintStep } from './numbers.ts';

/** The step of tables, one digit finer than that of sentences: 5 to 1, 1 to 0.1. */
export function tableStep({ step }: PrintStep): PrintStep {
  const power = Math.ceil(Math.log10(step) - 1e-9) - 1;
  return { step: Number(`1e${power}`), decimals: Math.max(0, -power) };
}
