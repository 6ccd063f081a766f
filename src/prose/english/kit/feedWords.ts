/** Fixed words of the feeds. */
export const feedWords = {
  interest: (sentences: readonly string[]): string => `Our interest: ${sentences.join(' ')}`,
  withdrawn: (reason: string): string => `Withdrawn. ${reason}`.trim(),
  corrected: (title: string): string => `Corrected: ${title}`,
  replaced: (title: string): string => `Replaced: ${title}`,
  gone: (title: string): string => `Withdrawn: ${title}`,
  correction: (what: string, was: string, now: string): string =>
    `${what}. It said: ${was}. It now says: ${now}.`,
  replacement: (title: string): string => `A newer report replaces it: ${title}.`,
} as const;
