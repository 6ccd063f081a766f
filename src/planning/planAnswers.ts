/** The answers of a plan as typed; absent: not given. */
export interface PlanAnswers {
  readonly contender?: readonly string[];
  readonly varied?: string;
  readonly metric?: string;
  readonly matters?: string;
  readonly club?: string;
  readonly hitter?: string;
  readonly player?: string;
  readonly spread?: string;
  readonly order?: string;
  readonly shots?: string;
  readonly seed?: string;
  readonly slug?: string;
  readonly title?: string;
  readonly question?: string;
  readonly expectation?: string;
  readonly 'exclusion-rule'?: string;
  readonly 'stopping-rule'?: string;
  readonly 'warm-up'?: string;
}

export type PlanKey = keyof PlanAnswers;
