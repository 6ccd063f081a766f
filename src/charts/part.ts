import type { Mark } from './mark.ts';

/** A stretch of a chart from top to bottom: what to draw and the height it takes, px. */
export interface Part {
  readonly marks: readonly Mark[];
  readonly height: number;
}

/** Parts below one another, each told where its top is. */
export const stack = (top: number, makers: readonly ((top: number) => Part)[]): Part => {
  const marks: Mark[] = [];
  let bottom = top;
  for (const make of makers) {
    const part = make(bottom);
    marks.push(...part.marks);
    bottom += part.height;
  }
  return { marks, height: bottom - top };
};
