/**
 * The element of a list or typed array at an index that cannot miss. Inner loops of flights and draws, whose time is
 * measured, read their typed arrays without it.
 *
 * @throws RangeError naming index and length where there is no element
 */
export function at<T>(items: ArrayLike<T>, index: number): T {
  const item = items[index];
  if (item === undefined) throw new RangeError(`no element at ${index} of ${items.length}`);
  return item;
}
