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
  'report-missing': { severity: 'error', title: 'There is no such report' },
  'no-reports': { severity: 'error', title: 'There is no report' },
  'session-file-missing': { severity: 'error', title: 'The session file is not there' },
  'duplicate-slug': { severity: 'error', title: 'Two reports would have the same address' },
  // Narrative
  'unknown-reference': { severity: 'error', title: 'A value or chart in the narrative is unknown' },
  'link-refused': { severity: 'error', title: 'A link or picture in the narrative is refused' },
  'picture-without-text': { severity: 'error', title: 'A picture has no alternative text' },
  // From CSV to session
  'contender-not-in-report': {
    severity: 'error',
    title: 'The CSV names a contender that the report does not',
  },
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
  // Reading a CSV of shots: bytes and layout
  'not-text': { severity: 'error', title: 'The file is not text' },
  'file-too-large': { severity: 'error', title: 'The file is too large' },
  'too-many-rows': { severity: 'error', title: 'The file has too many rows' },
  'record-too-long': { severity: 'error', title: 'A row is too long to be a shot' },
  'encoding-broken': { severity: 'error', title: 'Some bytes are no characters' },
  'encoding-guessed': { severity: 'warning', title: 'The encoding was guessed' },
  'trailing-nul-padding': { severity: 'warning', title: 'Empty bytes after the last row' },
  'nul-byte': { severity: 'error', title: 'An empty byte inside a cell' },
  'unclosed-quote': { severity: 'error', title: 'A quote is never closed' },
  'header-missing': { severity: 'error', title: 'No line of headings was found' },
  'heading-ambiguous': { severity: 'error', title: 'A heading could mean two things' },
  'duplicate-column': { severity: 'error', title: 'Two columns say the same thing differently' },
  'override-matches-nothing': { severity: 'error', title: 'A column named in the report is not in the file' },
  'too-few-cells': { severity: 'error', title: 'A row is too short' },
  'too-many-cells': { severity: 'error', title: 'A row is too long' },
  'truncated-row': { severity: 'error', title: 'The file is cut off' },
  'misaligned-row': { severity: 'error', title: 'A row has slipped by one cell' },
  'text-line-ignored': { severity: 'warning', title: 'A line of text was left out' },
  'summary-rows-ignored': { severity: 'warning', title: 'Summary rows were left out' },
  'duplicate-shots-removed': { severity: 'warning', title: 'A repeated row was counted once' },
  // Reading a CSV of shots: numbers and units
  'mixed-decimal-marks': { severity: 'warning', title: 'Two decimal marks in one file' },
  'decimal-mark-inferred': { severity: 'warning', title: 'The decimal mark was worked out' },
  'decimal-mark-ambiguous': { severity: 'error', title: 'The decimal mark cannot be told' },
  'negative-spelling': { severity: 'warning', title: 'Unusual minus signs' },
  'contradictory-sign': { severity: 'error', title: 'Left or right is said twice' },
  'direction-missing': { severity: 'error', title: 'Left or right is not said' },
  'unit-ambiguous': { severity: 'error', title: 'The unit cannot be told' },
  'unit-contradiction': { severity: 'error', title: 'The unit does not fit the numbers' },
  'unit-unknown': { severity: 'error', title: 'A unit that is not read' },
  'unit-inferred': { severity: 'warning', title: 'The unit was worked out' },
  'mixed-units-in-column': { severity: 'warning', title: 'Two units in one column' },
  'column-scale-inferred': { severity: 'warning', title: 'A column is written in thousands' },
  'implausible-value': { severity: 'error', title: 'A number that cannot be' },
  'zero-as-missing': { severity: 'warning', title: 'Zeros were read as not measured' },
  'sentinel-as-missing': { severity: 'warning', title: 'Fill-in numbers were read as not measured' },
  // Reading a CSV of shots: names, marks and times
  'club-missing': { severity: 'error', title: 'A shot has no club' },
  'club-column-missing': { severity: 'warning', title: 'The file names no club' },
  'club-from-title': {
    severity: 'warning',
    title: 'Club names were taken from the lines above the headings',
  },
  'club-filled-down': { severity: 'warning', title: 'Blank club cells were filled from above' },
  'club-names-merged': { severity: 'warning', title: 'Spellings of one club were merged' },
  'hitter-names-merged': { severity: 'warning', title: 'Spellings of one hitter were merged' },
  'similar-club-names': { severity: 'warning', title: 'Two clubs have nearly the same name' },
  'hitter-missing': { severity: 'warning', title: 'Some shots name no hitter' },
  'multiple-hitters': { severity: 'warning', title: 'More than one hitter' },
  'shots-marked-excluded': { severity: 'warning', title: 'Shots marked as not to be used' },
  'warm-up-shots': { severity: 'warning', title: 'Warm-up shots' },
  'mark-unclear': { severity: 'error', title: 'A mark cannot be understood' },
  'date-ambiguous': { severity: 'warning', title: 'Day and month cannot be told apart' },
  'time-not-read': { severity: 'warning', title: 'Some times were not understood' },
  'formula-like-text': { severity: 'warning', title: 'Text that looks like a formula' },
  'markup-in-text': { severity: 'warning', title: 'Text that looks like markup' },
} as const satisfies Record<string, KindOfProblem>;

export type ProblemKind = keyof typeof problemKinds;
