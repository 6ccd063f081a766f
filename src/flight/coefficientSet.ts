/**
 * Drag and lift of a golf ball as one publication measured them. `spinParameter` is surface speed over air speed,
 * `reynolds` by the ball's diameter; both functions take any value of 0 and up, and hold their ends outside the
 * range measured.
 */
export interface CoefficientSet {
  readonly id: string;
  /** As it stands in running text. */
  readonly name: string;
  /** Where it was published, and how the figures reached us. */
  readonly source: string;
  /** Where the measurements lie. */
  readonly range: {
    readonly spinParameter: readonly [low: number, high: number];
    readonly reynolds: readonly [low: number, high: number];
  };
  readonly drag: (spinParameter: number, reynolds: number) => number;
  readonly lift: (spinParameter: number, reynolds: number) => number;
  /**
   * Reads spin parameter and Reynolds number from `flow[0]` and `flow[1]`, writes drag and lift into `flow[2]` and
   * `flow[3]`: numbers handed over in an array are never boxed, which halves the time of a flight.
   */
  readonly both: (flow: Flow) => void;
  /** lambda in dw/dt = -lambda V w / r */
  readonly spinDecay: number;
  /**
   * Drag factors that ordinary balls and air bring about; a fitted one outside says that conditions or data are
   * unusual. Null where nobody has judged it for this set.
   */
  readonly usualDragScale: readonly [low: number, high: number] | null;
}

/** Spin parameter, Reynolds number, drag, lift. */
export type Flow = Float64Array<ArrayBuffer>;

/** A value held at `low` and `high`: plain numbers, since a flight asks four times a step. */
export function held(value: number, low: number, high: number): number {
  return value < low ? low : value > high ? high : value;
}

/**
 * A value held a little above `high`: from there its slope falls from 1 to 0 over `over`, so that it ends at
 * `high + over / 2` without a bend that a smooth surface could not follow.
 */
export function eased(value: number, high: number, over: number): number {
  const beyond = value - high;
  if (beyond <= 0) return value;
  return beyond >= over ? high + over / 2 : value - beyond ** 2 / (2 * over);
}
