const width = 100;

/** Said of answers without which the build stops. */
export const mustBeAnswered = 'Must be answered.';

/** Comment lines of YAML, wrapped; none for an empty text. */
export function comment(text: string, indent = 0): readonly string[] {
  const start = `${' '.repeat(indent)}# `;
  const lines: string[] = [];
  for (const word of text.split(/\s+/).filter((each) => each !== '')) {
    const last = lines.at(-1);
    if (last === undefined || last.length + 1 + word.length > width) lines.push(`${start}${word}`);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return lines;
}

interface Question {
  readonly key: string;
  /** Null where nothing need be asked, or has been asked above. */
  readonly question: string | null;
  /** As YAML; empty: only the fitter knows. */
  readonly answer?: string;
  readonly must?: boolean;
  readonly indent?: number;
}

/** A question as a comment, and below it the line for its answer. */
export function ask({ key, question, answer = '', must = false, indent = 0 }: Question): readonly string[] {
  const asked = question === null ? null : must ? `${mustBeAnswered} ${question}` : question;
  return [
    ...(asked === null ? [] : comment(asked, indent)),
    `${' '.repeat(indent)}${key}:${answer === '' ? '' : ` ${answer}`}`,
  ];
}
