const small = [
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen',
  'twenty thirty forty fifty sixty seventy eighty ninety',
].map((words) => words.split(' '));
const [units = [], tens = []] = small;
const fromTwo = units.slice(2);

const digit = `(?:${units.slice(1, 10).join('|')})`;
const underHundred = `(?:${tens.join('|')})(?:[- ]${digit})?|${[...fromTwo].reverse().join('|')}`;
const hundreds = `(?:an?|${digit}) hundred(?:(?: and)? (?:${underHundred}|one))?`;
const thousands = `(?:an?|${underHundred}|one) thousand(?:,? (?:and )?(?:${hundreds}|${underHundred}))?`;

/** A number in English words from two on, as the source of a regular expression; "one" and "a" are no count. */
export const numberWords = `(?:half )?a dozen|${thousands}|${hundreds}|${underHundred}`;

/** The value of a number in words that `numberWords` matches: "two hundred and fifty-one" is 251. */
export function valueOfWords(words: string): number {
  let [whole, part] = [0, 0];
  for (const word of words.toLowerCase().split(/[\s,-]+/)) {
    if (word === 'thousand') [whole, part] = [whole + part * 1000, 0];
    else if (word === 'hundred') part *= 100;
    else if (word === 'dozen') part *= 12;
    else if (word === 'half') part = 0.5;
    else if (word === 'a' || word === 'an') part = part === 0 ? 1 : part;
    else
      part += Math.max(0, units.indexOf(word)) + 10 * (tens.indexOf(word) < 0 ? 0 : tens.indexOf(word) + 2);
  }
  return whole + part;
}
