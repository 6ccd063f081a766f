/** Whether words about several mean another one for each of them: "its maker". */
export function isOwnToEach(words: string, of: readonly string[]): boolean {
  return of.length > 1 && /\bits\b/i.test(words);
}

/** " by its maker"; of several ", each by its maker". */
export function eachBy(words: string, of: readonly string[]): string {
  return isOwnToEach(words, of) ? `, each ${words}` : ` ${words}`;
}
