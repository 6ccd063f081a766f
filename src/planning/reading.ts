/** An answer that can be used, or what was expected instead. */
export type Reading<T> = { readonly value: T } | { readonly expected: string };
