import type { EmailParts } from './emailParts.ts';

const widest = 72;

/** The plain-text part of the mail, lines of at most 72 characters: the same words in the same order. */
export function emailText(parts: EmailParts): string {
  const { publisher, title, question, interest, answer, amounts, whom, mind, gaps, report, terms } = parts;
  const paragraphs = [
    publisher,
    title,
    question,
    `Our interest. ${interest}`,
    'The answer',
    answer,
    ...(amounts === '' ? [] : [`How much. ${amounts}`]),
    `For whom. ${whom}`,
    ...(mind === '' ? [] : [`Mind. ${mind}`]),
    'How far apart?',
    ...gaps.flatMap(({ of, rows }) => [
      ...(of === '' ? [] : [`${of}.`]),
      ...rows.map(({ answer: told, numbers }) => `- ${told} ${numbers}`.trimEnd()),
    ]),
    `All shots, conditions and numbers:\n${report}`,
    `A comparison is not a fitting; try clubs with a qualified fitter. ${terms}`.trim(),
  ];
  return `${paragraphs.map((words) => words.split('\n').map(wrapped).join('\n')).join('\n\n')}\n`;
}

function wrapped(words: string): string {
  const lines: string[] = [];
  for (const word of words.split(' ')) {
    const last = lines.at(-1);
    if (last === undefined || `${last} ${word}`.length > widest) lines.push(word);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return lines.join('\n');
}
