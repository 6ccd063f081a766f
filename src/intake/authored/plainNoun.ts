/** Plurals of which a test compares single ones; "grooves" and "irons" come as sets, and stay. Common practice, no source. */
const singly = /\b(head|shaft|ball|driver|club|hybrid|putter|loft|length|grip|face|finish)e?s$/;

/**
 * The noun in an answer to what differed, to stand behind "each", "identical" or "only the": "The heads" is the head. Small
 * letters but for a name or an abbreviation: "Heads", not "MOI".
 */
export function plainNoun(answer: string): string {
  const noun = answer
    .trim()
    .replace(/^(?:(?:only|the|an?)\s+)+/i, '')
    .replace(/\.$/, '');
  const small = noun.replace(/^\p{Lu}(?=\p{Ll}+(?![\p{L}\d]))/u, (letter) => letter.toLowerCase());
  return small === '' ? answer.trim() : small.replace(singly, '$1');
}
