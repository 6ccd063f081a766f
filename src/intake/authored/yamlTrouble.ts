import type { ProblemKind } from '../../problems/kinds.ts';

/** Something wrong in the YAML itself, in our words. */
export interface YamlTrouble {
  readonly kind: ProblemKind;
  readonly line: number;
  readonly column: number;
  /** After a fatal one nothing else in the text can be trusted. */
  readonly fatal: boolean;
  readonly expected: string;
  readonly found: string;
  readonly cure: string;
}

/** A value in the quotes that leave everything in it as it is. */
export function inQuotes(typed: string): string {
  // Curly ones are letters to YAML, and would be printed inside the straight ones.
  const value = /^[“‘„«][^“”‘„«»]*[”’“»]$/u.test(typed) ? typed.slice(1, -1) : typed;
  return value.includes('"') || value.includes('\\') ? `'${value.replaceAll("'", "''")}'` : `"${value}"`;
}
