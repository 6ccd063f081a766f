/** Pixels from the top left, four bytes each: red, green and blue, multiplied by how much they cover, and that. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array;
}
