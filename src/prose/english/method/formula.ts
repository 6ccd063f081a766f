/** A method of the analysis: what it is for, how it is calculated, and whose it is. */
export interface Formula {
  readonly id: string;
  readonly name: string;
  /** A line each, in the notation of `mathMl()`. */
  readonly lines: readonly string[];
  /** What letters of these lines alone stand for, or a method in words. */
  readonly where: string | null;
  readonly why: string;
  readonly source: string;
}

export const own = 'Our own rule.';
export const simulated = 'Our own rule; how often it errs is in the tables below.';
