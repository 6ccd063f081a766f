/** Where a figure of a primary metric stands on the page. */
export interface FigurePlace {
  readonly id: string;
  /** Whether its question names the metric: there is another one of its kind. */
  readonly named: boolean;
}
