import type { Report } from '../kit/report.ts';
import { capitalised } from '../prose/words.ts';

/** Reports that compared the same kind of thing. */
export interface ReportKind {
  /** For an address on the page. */
  readonly id: string;
  /** What was compared, several of it: "Balls". */
  readonly title: string;
  readonly reports: readonly Report[];
}

/** Reports by the kind of what they compared; kinds and reports in the order given, so newest first. */
export function reportKinds(reports: readonly Report[]): readonly ReportKind[] {
  const kinds = Map.groupBy(reports, ({ telling }) => telling.nouns.toLowerCase());
  return [...kinds].map(([nouns, own], index) => ({
    id: `kind-${index + 1}`,
    title: capitalised(nouns),
    reports: own,
  }));
}
