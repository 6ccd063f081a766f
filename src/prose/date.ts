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

/** Whether a language tag asks for the spelling and the dates of the United States. */
export const isAmerican = (locale: string): boolean => new Intl.Locale(locale).region === 'US';
