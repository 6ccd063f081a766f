import type { ProblemKind, Severity } from './kinds.ts';

export type { Severity };

/**
 * One thing that is wrong, or worth knowing, about what a shop wrote or recorded.
 * Problems are collected and shown together; none is thrown.
 */
export interface Problem {
  readonly kind: ProblemKind;
  readonly severity: Severity;
  /** Path from the content folder, with forward slashes. */
  readonly file: string;
  /** Physical line, counted from 1; null when the whole file is meant. */
  readonly line: number | null;
  /** Cell number in a CSV record, or character in a text line, counted from 1. */
  readonly column: number | null;
  /** The heading of the CSV column, or the dotted key of the front matter. */
  readonly columnName: string | null;
  readonly expected: string;
  /** What stands there, as typed; null when nothing does. */
  readonly found: string | null;
  /** What the fitter can do about it. */
  readonly cure: string;
  /** The same for whoever works by forms; only where the cure names a command. */
  readonly cureAtDesk?: string;
  /** The sentence a reader of the page should see; null when it concerns the fitter alone. */
  readonly forReader: string | null;
  /** What can be taken in the place of what stands there, where the cure offers it. */
  readonly offered?: Offered;
}

/** A sentence that is ready to be taken. */
export interface Offered {
  /** What it is taken in place of, as it stands in the text. */
  readonly instead: string;
  /** What is written there; in a narrative a reference: `{{ answer carry alder birch }}`. */
  readonly text: string;
  /** What a reader then reads. */
  readonly prints: string;
  /** The cure without the offer; empty where there is no other. */
  readonly besides: string;
}

/** Where a problem stands. */
export interface Place {
  readonly file: string;
  readonly line: number | null;
  readonly column: number | null;
  readonly columnName: string | null;
}
