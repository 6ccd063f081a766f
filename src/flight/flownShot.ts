import type { Launch } from './launch.ts';

/** A shot with its launch and the carry that was read for it, metres along the target line. */
export interface FlownShot {
  readonly launch: Launch;
  readonly carry: number;
}
