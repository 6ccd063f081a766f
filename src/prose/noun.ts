/** The noun of what a test varied, for one of them and for several. */
interface Noun {
  readonly one: string;
  readonly many: string;
}

/** `head` and `heads`; `set of grooves` and `grooves`, where the trade's word is a plural already. */
export function nounOf(varied: string): Noun {
  const word = varied.trim();
  if (/(?<!s)s$/i.test(word)) return { one: `set of ${word}`, many: word };
  const [head = word, ...rest] = word.split(/(?= (?:of|with|in) )/i);
  return { one: word, many: plural(head) + rest.join('') };
}

function plural(word: string): string {
  if (/(s|x|ch|sh)$/i.test(word)) return `${word}es`;
  return /[^aeiou]y$/i.test(word) ? `${word.slice(0, -1)}ies` : `${word}s`;
}
