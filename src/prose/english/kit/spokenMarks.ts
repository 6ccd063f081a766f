import { countWord } from '../../words.ts';

const units = [
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen',
  'twenty thirty forty fifty sixty seventy eighty ninety',
].map((words) => words.split(' '));
const [small = [], tens = []] = units;

/** A number as it is read aloud: "172.4" is "one hundred and seventy-two point four", "7,500" "seven thousand five hundred". */
export function numberAloud(printed: string): string {
  const [whole = '', decimals = ''] = printed.replaceAll(',', '').split('.');
  const digits = [...decimals].map((digit) => small[Number(digit)] ?? digit).join(' ');
  return `${wholeAloud(Number(whole))}${digits === '' ? '' : ` point ${digits}`}`;
}

function wholeAloud(number: number): string {
  if (number < 20) return small[number] ?? countWord(number);
  if (number < 100) {
    const ten = tens[Math.floor(number / 10) - 2] ?? '';
    return number % 10 === 0 ? ten : `${ten}-${small[number % 10] ?? ''}`;
  }
  if (number < 1000) {
    const rest = number % 100;
    return `${wholeAloud(Math.floor(number / 100))} hundred${rest === 0 ? '' : ` and ${wholeAloud(rest)}`}`;
  }
  const rest = number % 1000;
  const thousands = `${wholeAloud(Math.floor(number / 1000))} thousand`;
  if (rest === 0) return thousands;
  return `${thousands}${rest < 100 ? ' and' : ''} ${wholeAloud(rest)}`;
}

/** Signs of units behind a number, as they are read aloud. */
const signs: Readonly<Record<string, string>> = {
  '%': ' percent',
  '°': ' degrees',
  yd: 'yards',
  m: 'metres',
  ft: 'feet',
  mph: 'miles an hour',
  'm/s': 'metres a second',
  'km/h': 'kilometres an hour',
  rpm: 'revolutions a minute',
  s: 'seconds',
};

/**
 * A sentence as it is read aloud: numbers in words, units by name, brackets as commas, quotation marks gone. It says what
 * the sentence says and decides nothing.
 */
export function readAloud(sentence: string): string {
  return sentence
    .replace(/(\p{L})(\d)/gu, '$1 $2')
    .replace(
      /(\d) (yd|m\/s|km\/h|mph|rpm|ft|m|s)(?=[\s,.;:)]|$)/g,
      (_, digit: string, sign: string) => `${digit} ${signs[sign] ?? sign}`,
    )
    .replace(/(\d)([%°])/g, (_, digit: string, sign: string) => `${digit}${signs[sign] ?? ''}`)
    .replace(/(\d)[–-](?=\d)/g, '$1 to ')
    .replace(/\d[\d,]*(?:\.\d+)?/g, (printed) =>
      printed.endsWith(',') ? `${numberAloud(printed.slice(0, -1))},` : numberAloud(printed),
    )
    .replace(/ \(([^()]*)\)/g, ', $1,')
    .replace(/,(?=[.;:,])/g, '')
    .replace(/[“”"‘()]/g, '')
    .replace(/; (\p{L})/gu, (_, first: string) => `. ${first.toUpperCase()}`)
    .replace(/[<>=+*#_;]/g, '')
    .replace(/&/g, 'and')
    .replace(/ {2,}/g, ' ')
    .trim()
    .replace(/^\p{Ll}/u, (first) => first.toUpperCase());
}
