import type { Telling } from '../prose/telling.ts';
import type { ContenderName } from './apartInput.ts';

/** A contender as charts know it: its name for readers and its place in the report's list. */
export function contenderName(id: string, telling: Telling): ContenderName {
  return {
    label: telling.nameOf(id),
    index: telling.findings.contenders.findIndex((contender) => contender.id === id),
  };
}
