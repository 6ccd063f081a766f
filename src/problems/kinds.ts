import type { Severity } from './problem.ts';

interface KindOfProblem {
  readonly severity: Severity;
  /** What happened, in a few words that never change, so that it can be searched for. */
  readonly title: string;
}

/** Every kind of problem, with its usual severity and its title. Names are stable: scripts may rely on them. */
export const problemKinds = {
  // Authored files
  'yaml-syntax': { severity: 'error', title: 'The YAML cannot be read' },
  'comment-cuts-value': { severity: 'error', title: 'A # cuts the value short' },
  'front-matter-missing': { severity: 'error', title: 'The report has no front matter' },
  'unknown-key': { severity: 'error', title: 'Unknown key' },
  'key-missing': { severity: 'error', title: 'A required answer is missing' },
  'interests-missing': { severity: 'error', title: 'The interests are not answered' },
  'value-invalid': { severity: 'error', title: 'The value cannot be used' },
  'unknown-contender': { severity: 'error', title: 'Unknown contender' },
  'unknown-hitter': { severity: 'error', title: 'Unknown hitter' },
  'unknown-metric': { severity: 'error', title: 'Unknown metric' },
  'contender-file-missing': { severity: 'error', title: 'A contender has no build sheet' },
  'shop-missing': { severity: 'warning', title: 'There is no shop.yaml' },
  'path-outside-report': { severity: 'error', title: 'A path leaves the folder of the report' },
  'session-file-missing': { severity: 'error', title: 'The session file is not there' },
  'duplicate-slug': { severity: 'error', title: 'Two reports would have the same address' },
  // Narrative
  'unknown-reference': { severity: 'error', title: 'A value or chart in the narrative is unknown' },
  'link-refused': { severity: 'error', title: 'A link or picture in the narrative is refused' },
  'picture-without-text': { severity: 'error', title: 'A picture has no alternative text' },
  // From CSV to session
  'contender-not-in-report': { severity: 'error', title: 'The CSV names a contender that the report does not' },
  'contender-not-in-csv': { severity: 'error', title: 'A contender of the report has no shot in the CSV' },
  'hitter-not-in-report': { severity: 'error', title: 'The CSV names a hitter that the report does not' },
  'hitter-not-in-csv': { severity: 'error', title: 'A hitter of the report has no shot in the CSV' },
  'exclusion-matches-nothing': { severity: 'error', title: 'An exclusion matches no shot' },
  'primary-column-missing': { severity: 'error', title: 'The primary metric has no column' },
  'column-missing': { severity: 'error', title: 'A needed column is missing' },
  'unit-missing': { severity: 'error', title: 'A distance has no unit' },
  'not-a-number': { severity: 'error', title: 'Not a number' },
  'no-shots': { severity: 'error', title: 'No shot in the file' },
  'empty-file': { severity: 'error', title: 'The file is empty' },
} as const satisfies Record<string, KindOfProblem>;

export type ProblemKind = keyof typeof problemKinds;
