export interface FailedReport {
  readonly slug: string;
  readonly error: unknown;
}

/** Reports that could not be worked out, by no fault of theirs that a check could find. */
export class ReportsFailed extends Error {
  override readonly name = 'ReportsFailed';
  readonly failed: readonly FailedReport[];

  constructor(failed: readonly FailedReport[]) {
    super(failed.map(({ slug }) => slug).join(', '));
    this.failed = failed;
  }
}
