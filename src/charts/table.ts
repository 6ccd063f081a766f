/** A chart's numbers in rows; the first cell of a row heads it. */
export interface Table {
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}
