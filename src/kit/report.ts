import type { Figure } from '../charts/figure.ts';
import type { Findings } from '../findings/findings.ts';
import type { Source } from '../intake/authored/source.ts';
import type { Session } from '../intake/session.ts';
import type { Problem } from '../problems/problem.ts';
import type { Telling } from '../prose/telling.ts';

/** A report analysed and ready to be shown: all that pages and downloads are made from. */
export interface Report {
  /** Changes with anything the report is made from; null where that is not known. */
  readonly key: string | null;
  readonly source: Source;
  readonly session: Session;
  readonly findings: Findings;
  readonly telling: Telling;
  /** The fitter's paragraphs as safe HTML; empty where nothing was written. */
  readonly narrativeHtml: string;
  readonly figures: readonly Figure[];
  /** The same figures in the units that the shop does not use; they take as long to draw, and few ask for them. */
  readonly figuresInOtherUnits: () => readonly Figure[];
  readonly problems: readonly Problem[];
}
