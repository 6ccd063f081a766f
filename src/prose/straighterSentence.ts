import { sayStraighter } from './english/straighter.ts';
import { straighterOf } from './straighter.ts';
import type { Telling } from './telling.ts';

/** Whether anything finished nearer the target line. */
export function straighterSentence(telling: Telling): string {
  return sayStraighter(straighterOf(telling.findings), telling);
}
