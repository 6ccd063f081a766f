/** The order of day and month in dates written with numbers alone. */
export type DateOrder = 'day first' | 'month first' | 'unknown';

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?!\d)/;
const numeric = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})(?!\d)/;
const dayName = /^(\d{1,2})\.?[\s-]+([a-z]{3,9})\.?,?[\s-]+(\d{4})(?!\d)/i;
const nameDay = /^([a-z]{3,9})\.?\s+(\d{1,2})(?:st|nd|rd|th)?,?\s+(\d{4})(?!\d)/i;
const clock =
  /^[\sT,]*(\d{1,2}):(\d{2})(?::(\d{2})((?:\.|,)\d{1,6})?)?\s*(am|pm|a\.m\.|p\.m\.)?\s*(Z|[+-]\d{2}:?\d{2})?$/i;

const two = (value: number): string => String(value).padStart(2, '0');

function isoDate(year: number, month: number, day: number): string | null {
  const date = new Date(Date.UTC(year, month - 1, day));
  const real =
    date.getUTCFullYear() === year && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
  return real ? `${String(year).padStart(4, '0')}-${two(month)}-${two(day)}` : null;
}

/** What one date written in numbers alone tells about the order of day and month; null where it tells nothing. */
export function orderTold(text: string): DateOrder | null {
  const match = numeric.exec(text.trim());
  if (match === null) return null;
  const [first, second] = [Number(match[1]), Number(match[3])];
  if (first > 12 && second <= 12) return 'day first';
  if (second > 12 && first <= 12) return 'month first';
  // Points are used with the day in front only.
  if (match[2] === '.') return 'day first';
  return first === second ? null : 'unknown';
}

function readDate(
  text: string,
  order: DateOrder,
): { readonly date: string | null; readonly rest: string } | null {
  const plain = iso.exec(text);
  if (plain !== null) {
    return {
      date: isoDate(Number(plain[1]), Number(plain[2]), Number(plain[3])),
      rest: text.slice(plain[0].length),
    };
  }
  const numbers = numeric.exec(text);
  if (numbers !== null) {
    const [first, second, written] = [Number(numbers[1]), Number(numbers[3]), Number(numbers[4])];
    const year = written < 100 ? 2000 + written : written;
    const rest = text.slice(numbers[0].length);
    if (first === second || order === 'day first') return { date: isoDate(year, second, first), rest };
    return { date: order === 'month first' ? isoDate(year, first, second) : null, rest };
  }
  const named = dayName.exec(text);
  const turned = named === null ? nameDay.exec(text) : null;
  const match = named ?? turned;
  if (match === null) return null;
  const [day, month] = named === null ? [match[2], match[1]] : [match[1], match[2]];
  const index = months.indexOf((month ?? '').slice(0, 3).toLowerCase());
  return {
    date: index < 0 ? null : isoDate(Number(match[3]), index + 1, Number(day)),
    rest: text.slice(match[0].length),
  };
}

function readClock(text: string): string | null {
  const match = clock.exec(text);
  if (match === null) return null;
  let hour = Number(match[1]);
  const half = match[5]?.[0]?.toLowerCase();
  if (half !== undefined && (hour < 1 || hour > 12)) return null;
  if (half === 'p' && hour < 12) hour += 12;
  if (half === 'a' && hour === 12) hour = 0;
  const [minute, second] = [Number(match[2]), Number(match[3] ?? 0)];
  if (hour > 23 || minute > 59 || second > 59) return null;
  const seconds = match[3] === undefined ? '' : `:${two(second)}${(match[4] ?? '').replace(',', '.')}`;
  return `${two(hour)}:${two(minute)}${seconds}${match[6] ?? ''}`;
}

/**
 * A time, or a date and a time, as ISO 8601 text; null where it cannot be read for certain. Text that is ISO already
 * comes back as it stands, but for a space instead of the T.
 */
export function readTime(text: string, order: DateOrder): string | null {
  const trimmed = text.replace(/\s+/g, ' ').trim();
  if (trimmed === '' || trimmed.length > 60) return null;
  if (/^\d{4}-\d{2}-\d{2}[T ]\d{2}:\d{2}(?::\d{2}(?:\.\d+)?)?(?:Z|[+-]\d{2}:?\d{2})?$/.test(trimmed)) {
    return readDate(trimmed, order)?.date == null || readClock(trimmed.slice(10)) === null
      ? null
      : trimmed.replace(' ', 'T');
  }
  const dated = readDate(trimmed, order);
  if (dated === null) return readClock(trimmed);
  if (dated.date === null) return null;
  if (dated.rest.trim() === '') return dated.date;
  const time = readClock(dated.rest);
  return time === null ? null : `${dated.date}T${time}`;
}
