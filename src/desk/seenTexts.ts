/** Texts as they were when forms were made of them, by their hashes. */
interface SeenTexts {
  readonly remember: (hash: string, text: string) => void;
  /** Null for one that is too long ago, or of an earlier run. */
  readonly recall: (hash: string) => string | null;
}

/** So many forms may stand open at once; an older one is compared with the file as it is. */
const most = 200;

export function seenTexts(): SeenTexts {
  const texts = new Map<string, string>();
  return {
    remember: (hash, text) => {
      texts.delete(hash);
      texts.set(hash, text);
      const [oldest] = texts.keys();
      if (texts.size > most && oldest !== undefined) texts.delete(oldest);
    },
    recall: (hash) => texts.get(hash) ?? null,
  };
}
