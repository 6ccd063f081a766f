import type { Report } from '../../src/kit/report.ts';

/** One named case of a page component: documentation, page of the specimen and test at once. */
export interface Example {
  readonly name: string;
  readonly props: Readonly<Record<string, unknown>>;
  /** Words that a reader must find. */
  readonly shows: readonly string[];
  /** Words that must not be there. */
  readonly hides?: readonly string[];
}

/** The cases of one component, made of the reports of `triedContent.ts`. */
export interface ComponentExamples {
  /** File name of the component without its ending. */
  readonly component: string;
  readonly examples: (report: (slug: string) => Report) => readonly Example[];
}
