import type { Telling } from '../prose/telling.ts';

/** A contender as charts know it. */
export interface ContenderName {
  /** Its name for readers. */
  readonly label: string;
  /** Place in the report's list of contenders, from 0. */
  readonly index: number;
}

export function contenderName(id: string, telling: Telling): ContenderName {
  return {
    label: telling.nameOf(id),
    index: telling.findings.contenders.findIndex((contender) => contender.id === id),
  };
}
