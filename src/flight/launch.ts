/** A ball as it leaves the club. */
export interface Launch {
  /** m/s */
  readonly ballSpeed: number;
  /** degrees above the ground */
  readonly launchAngle: number;
  /** degrees right of the target line */
  readonly launchDirection: number;
  /** rpm, total */
  readonly spinRate: number;
  /** degrees; positive lowers the right end of the axis and curves the ball right */
  readonly spinAxis: number;
}
