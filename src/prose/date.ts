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

/** `2026-04-11` as `11 April 2026`. */
export function dateInWords(iso: string): string {
  const [year = '', month = '', day = ''] = iso.split('-');
  const name = months[Number(month) - 1];
  return name === undefined ? iso : `${Number(day)} ${name} ${year}`;
}
