/** Work that is done when first asked for, and not again. */
export function once<Value>(work: () => Value): () => Value {
  let done: { readonly value: Value } | null = null;
  return () => (done ??= { value: work() }).value;
}

/** A pure function of one object, worked out once for each object and kept as long as that object lives. */
export function onceEach<Key extends object, Value>(work: (key: Key) => Value): (key: Key) => Value {
  const known = new WeakMap<Key, { readonly value: Value }>();
  return (key) => {
    const own = known.get(key) ?? { value: work(key) };
    known.set(key, own);
    return own.value;
  };
}

/** The same for a function of a number, kept as long as the function lives. */
export function onceEachNumber<Value>(work: (key: number) => Value): (key: number) => Value {
  const known = new Map<number, { readonly value: Value }>();
  return (key) => {
    const own = known.get(key) ?? { value: work(key) };
    known.set(key, own);
    return own.value;
  };
}
