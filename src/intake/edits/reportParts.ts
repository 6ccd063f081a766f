/** A report's file in its three parts, which put together are the file as it was. */
interface ReportParts {
  /** A byte order mark and the opening line of dashes. */
  readonly opening: string;
  /** The answers, from the first line under the dashes to the end of the last one. */
  readonly answers: string;
  /** The closing line of dashes and its line break. */
  readonly closing: string;
  readonly narrative: string;
}

const parts = /^(\uFEFF?---[ \t]*(?:\r\n|\n|\r))([^]*?(?:\r\n|\n|\r)|)(---[ \t]*(?:\r\n|\n|\r|$))([^]*)$/;

/** Null where the file has no answers between lines of dashes. */
export function reportParts(text: string): ReportParts | null {
  const [, opening, answers, closing, narrative] = parts.exec(text) ?? [];
  if (opening === undefined || answers === undefined || closing === undefined || narrative === undefined)
    return null;
  return { opening, answers, closing, narrative };
}

/** The line break that a text uses. */
export const lineBreakOf = (text: string): string => /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';

/** A report's file with another narrative; every answer stays as it is. Null where there are no answers. */
export function withNarrative(text: string, narrative: string): string | null {
  const found = reportParts(text);
  if (found === null) return null;
  const lineBreak = lineBreakOf(text);
  const { opening, answers, closing } = found;
  const body = narrative.replaceAll(/\r\n|\n|\r/g, lineBreak);
  const ended = /[\r\n]$/.test(closing) ? closing : `${closing}${lineBreak}`;
  return opening + answers + (body === '' ? closing : ended) + body;
}
