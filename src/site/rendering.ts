/** A box without room, by which the renderer hands out its drawing as it is: else it copies all of it pixel by pixel. */
export const uncropped = { left: 0, top: 0, right: 0, bottom: 0 } as const;
