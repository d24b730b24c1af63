/** The value of `work`, which is done at the first call only. */
export function lazily<T>(work: () => T): () => T {
  let done: { readonly value: T } | null = null;
  return () => {
    done ??= { value: work() };
    return done.value;
  };
}
