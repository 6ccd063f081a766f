import { mailWords } from '../prose/english/kit/mailWords.ts';
import type { EmailParts, MailFact } from './emailParts.ts';

const widest = 72;

/** The plain-text part of the mail, lines of at most 72 characters: the same words in the same order. */
export function emailText({
  publisher,
  title,
  question,
  interest,
  answers,
  facts,
  report,
  terms,
  ownSite,
}: EmailParts): string {
  const fact = ({ label, words }: MailFact): string => `${label}. ${words}`;
  const paragraphs = [
    publisher,
    title,
    question,
    fact(interest),
    ...answers.flatMap(({ title: measure, status, answer, singleShots, caution }) => [
      mailWords.answerHeading(measure, status),
      answer,
      ...(singleShots === null ? [] : [singleShots]),
      ...(caution === null ? [] : [fact(caution)]),
    ]),
    ...facts.map(fact),
    `${mailWords.wholeReport}:\n${report}`,
    `${mailWords.notAFitting} ${terms}`.trim(),
    ...(ownSite === null ? [] : [`${mailWords.ownSite}:\n${ownSite}`]),
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
