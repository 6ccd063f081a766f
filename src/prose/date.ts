const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** `2026-04-11` as `11 April 2026`, or as `April 11, 2026` where the locale is of the United States. */
export function dateInWords(iso: string, locale = 'en-GB'): string {
  const [year = '', month = '', day = ''] = iso.split('-');
  const name = months[Number(month) - 1];
  if (name === undefined) return iso;
  return isAmerican(locale) ? `${name} ${Number(day)}, ${year}` : `${Number(day)} ${name} ${year}`;
}

// Reading a language tag takes longer than all else that is said of a date, and a site has one or two.
const american = new Map<string, boolean>();

/** Whether a language tag asks for the spelling and the dates of the United States. */
function isAmerican(locale: string): boolean {
  const known = american.get(locale) ?? new Intl.Locale(locale).region === 'US';
  american.set(locale, known);
  return known;
}
