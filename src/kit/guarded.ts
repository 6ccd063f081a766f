/** Text with an apostrophe in front where a spreadsheet would run it as a formula. */
export function guarded(text: string): string {
  return /^[=+\-@＝＋－＠\t\r\n]/.test(text) && !/^[+-]?\d+(\.\d+)?$/.test(text) ? `'${text}` : text;
}
