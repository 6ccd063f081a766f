import type { Findings } from '../findings/findings.ts';

/** `findings.json`: SI units, finite numbers, one stable order of keys. */
export function findingsJson(findings: Findings): string {
  return `${JSON.stringify(findings, null, 1)}\n`;
}
