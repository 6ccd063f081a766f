import { isGap } from '../findings/verdict.ts';
import type { Telling } from './telling.ts';
import { listed } from './words.ts';

/** Whether any contender finished nearer the target line: seen, not planned. */
export function straighterSentence(telling: Telling): string {
  const { straighter } = telling.findings;
  if (straighter === null || straighter.every(({ verdict }) => verdict === 'not-judged')) {
    return 'Too few shots to call one straighter.';
  }
  const clear = straighter.filter(({ verdict, credit }) => isGap(verdict) && credit === 'contender');
  if (clear.length === 0) return 'These shots cannot call one straighter.';
  const parts = clear.map(({ a, b, estimate }) => {
    const [nearer, other] = (estimate ?? 0) < 0 ? [a, b] : [b, a];
    return `${telling.nameOf(nearer)} finished nearer the line than ${telling.nameOf(other)}`;
  });
  return `${listed(parts)}; this was seen, not planned, and needs a test of its own.`;
}
