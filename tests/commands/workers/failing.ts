/** A worker that fails at reports by their name. */
export default async function work({ slug }: { readonly slug: string }): Promise<void> {
  if (slug.startsWith('unwell')) throw new TypeError(`${slug} is not a function`);
  // Beside all that is awaited, as a callback of a library would.
  if (slug.startsWith('astray'))
    await new Promise(() => setImmediate(() => Promise.reject(new RangeError(`${slug} went astray`))));
}
