import { mailWords } from '../prose/english/kit/mailWords.ts';
import type { EmailParts, MailFact } from './emailParts.ts';

const widest = 72;

/** The plain-text part of the mail, lines of at most 72 characters: the same words in the same order. */
export function emailText(parts: EmailParts): string {
  const { answers, besidePicture, figures, facts, terms, ownSite } = parts;
  const fact = ({ label, words }: MailFact): string => `${label}. ${words}`;
  const keepInMind = (cautions: readonly string[]): readonly string[] =>
    cautions.length === 0 ? [] : [fact({ label: mailWords.caution, words: cautions.join(' ') })];
  const paragraphs = [
    parts.publisher,
    parts.title,
    parts.question,
    `${parts.standing} ${parts.day}`.trim(),
    ...answers.flatMap(({ heading, words, cautions }) => [heading, words, ...keepInMind(cautions)]),
    fact(parts.interest),
    ...keepInMind(besidePicture),
    figures.map(({ value, label }) => `${value}: ${label}`).join('\n'),
    ...facts.map(fact),
    `${mailWords.wholeReport}:\n${parts.report}`,
    `${mailWords.notAFitting} ${terms}`.trim(),
    ...(ownSite === null ? [] : [`${mailWords.ownSite}:\n${ownSite}`]),
    mailWords.toFill.join('\n'),
  ].filter((words) => words !== '');
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
