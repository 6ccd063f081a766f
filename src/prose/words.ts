const smallNumbers = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

/** A count in running text: words below ten, digits from there. */
export function countWord(count: number): string {
  return smallNumbers[count] ?? String(count);
}

/** `four to nine`, `4 to 11`: one kind of number in one range. */
export function countRange(least: number, most: number): string {
  if (least === most) return countWord(most);
  return most < smallNumbers.length ? `${countWord(least)} to ${countWord(most)}` : `${least} to ${most}`;
}

/** `one shot`, `12 shots`. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${countWord(count)} ${count === 1 ? one : many}`;
}

/** `Alder`, `Alder and Birch`, `Alder, Birch and Cedar`. */
export function listed(items: readonly string[], joiner = 'and'): string {
  const last = items[items.length - 1] ?? '';
  return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} ${joiner} ${last}`;
}

/** The same text with its first letter a capital. */
export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** The same text with its first letter a small one. */
export function uncapitalised(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** The text as a sentence: first letter a capital, one full stop at the end. */
export function sentence(text: string): string {
  const trimmed = text.trim();
  return /[.!?]$/.test(trimmed) ? capitalised(trimmed) : `${capitalised(trimmed)}.`;
}

const ordinals = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'];

/** `first`, `second`, ..., with `last` for the end of a row of at least two. */
export function placeInRow(index: number, length: number): string {
  return length > 1 && index === length - 1 ? 'last' : (ordinals[index] ?? `${index + 1}th`);
}
