const two = (part: number): string => String(part).padStart(2, '0');

/** The day where the shop is, ISO 8601. */
export function localDate(now: Date): string {
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** Hour and minute where the shop is: "14:05". */
export function localTime(now: Date): string {
  return `${two(now.getHours())}:${two(now.getMinutes())}`;
}
