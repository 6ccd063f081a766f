/** The noun of what a test varied, for one of them and for several. */
export interface Noun {
  readonly one: string;
  readonly many: string;
}

/** `head` and `heads`; `set of grooves` and `grooves`, where the trade's word is a plural already. */
export function nounOf(varied: string): Noun {
  const word = varied.trim();
  if (/(?<!s)s$/i.test(word)) return { one: `set of ${word}`, many: word };
  if (/(s|x|ch|sh)$/i.test(word)) return { one: word, many: `${word}es` };
  if (/[^aeiou]y$/i.test(word)) return { one: word, many: `${word.slice(0, -1)}ies` };
  return { one: word, many: `${word}s` };
}
