/** Whether a dotted key lies in what another one holds: `claims[2].say` in `claims[2]`, and that in `claims`. */
export const isIn = (inner: string, outer: string): boolean =>
  inner.startsWith(`${outer}.`) || inner.startsWith(`${outer}[`);

/** Whether it is that key, or lies in it. */
export const isAtOrIn = (inner: string, outer: string): boolean => inner === outer || isIn(inner, outer);
