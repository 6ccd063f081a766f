/** Why a statistic cannot be worked out. Stable: callers switch on it. */
type StatisticsErrorKind =
  /** fewer values, groups or rounds than the method needs */
  | 'sample-too-small'
  /** every value equal where the method divides by a spread */
  | 'no-spread'
  /** a table in which some rows and columns share no chain of cells */
  | 'not-connected'
  /** an argument outside the domain of the function (level of 1, negative degrees of freedom, NaN) */
  | 'bad-argument';

/** Thrown instead of returning NaN. `statistic` names the function, `message` what it needs and what it got. */
export class StatisticsError extends RangeError {
  readonly kind: StatisticsErrorKind;
  readonly statistic: string;

  constructor(kind: StatisticsErrorKind, statistic: string, what: string) {
    super(`${statistic}: ${what}`);
    this.name = 'StatisticsError';
    this.kind = kind;
    this.statistic = statistic;
  }
}

/** Throws `sample-too-small` unless `got >= least`; `what` names the things counted ("values", "groups"). */
export function requireAtLeast(statistic: string, what: string, got: number, least: number): void {
  if (!(got >= least)) {
    throw new StatisticsError('sample-too-small', statistic, `needs at least ${least} ${what}, got ${got}`);
  }
}

/** Throws `bad-argument` unless every value is a finite number. */
export function requireFinite(statistic: string, values: readonly number[]): void {
  const at = values.findIndex((value) => !Number.isFinite(value));
  if (at >= 0) {
    throw new StatisticsError(
      'bad-argument',
      statistic,
      `value ${at + 1} is not a finite number: ${values[at]}`,
    );
  }
}

/** Throws `bad-argument` unless 0 < value < 1. */
export function requireFraction(statistic: string, what: string, value: number): void {
  if (!(value > 0 && value < 1)) {
    throw new StatisticsError('bad-argument', statistic, `${what} must lie between 0 and 1, got ${value}`);
  }
}

/** Throws `bad-argument` unless value > 0 (infinity allowed). */
export function requirePositive(statistic: string, what: string, value: number): void {
  if (!(value > 0)) {
    throw new StatisticsError('bad-argument', statistic, `${what} must be above 0, got ${value}`);
  }
}
