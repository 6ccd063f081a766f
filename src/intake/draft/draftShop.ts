import { z } from 'zod';
import { schemaLine } from '../authored/schemaLine.ts';
import { contentVersion, shopAnswers } from '../authored/shop.ts';
import { meaningOf, takesOf } from '../authored/takes.ts';
import { comment, mustBeAnswered } from './ask.ts';

type Inside = NonNullable<ReturnType<typeof takesOf>['inside']>;

/** The text of a first `shop.yaml`: every question as its schema puts it, and below it the line for its answer. */
export function draftShop(): string {
  return [
    schemaLine('shop', ''),
    ...comment(
      'Who publishes, and what stays the same from report to report. Write each answer behind its colon. ' +
        `"${mustBeAnswered.replace('.', '')}": nothing is published without it. Whatever else stays empty is left out.`,
    ),
    `schema: ${contentVersion}`,
    ...questions(takesOf(shopAnswers).inside ?? [], 0),
    '',
  ].join('\n');
}

/** What can be said in words, or stands under keys that the shop chooses, is asked for on one line. */
function questions(inside: Inside, indent: number): readonly string[] {
  return inside.flatMap(([step, schema]) => {
    const key = step.slice(1);
    if (key === 'schema') return [];
    const { words, inWords, inside: below = [] } = takesOf(schema);
    const isBlock =
      inWords === undefined && below.length > 0 && below.every(([next]) => /^\.[a-z]/.test(next));
    const takes = isBlock ? 'text' : (inWords ?? words);
    const meaning = capital(meaningOf(schema) ?? '');
    const must = schema instanceof z.ZodExactOptional ? '' : `${mustBeAnswered} `;
    const said = takes === 'text' ? `${must}${meaning}.` : `${must}${meaning}. ${capital(takes)}.`;
    return [
      ...(indent === 0 ? [''] : []),
      ...comment(plain(said), indent),
      `${' '.repeat(indent)}${key}:`,
      ...(isBlock ? questions(below, indent + 2) : []),
    ];
  });
}

/** Without the signs of Markdown. */
const plain = (markdown: string): string =>
  markdown.replaceAll(/\[([^\]]*)\]\([^)]*\)/g, '$1').replaceAll('`', '');

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
