/** x towards the target, y up, z right. */
export interface Vector {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export const still: Vector = { x: 0, y: 0, z: 0 };
