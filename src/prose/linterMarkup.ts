import { makeProblem } from '../problems/makeProblem.ts';
import type { Place, Problem } from '../problems/problem.ts';
import { formNames } from './narrativeForms.ts';
import type { ProseSentence } from './linterText.ts';

type PlaceAt = (offset: number) => Partial<Place> & { readonly file: string };

const tag =
  /<\/?(?:a|b|i|u|em|strong|br|hr|p|div|span|font|img|table|tr|td|th|ul|ol|li|h[1-6]|center|small|sup|sub|iframe|script|style|video|figure|blockquote)(?:\s[^<>]*)?\/?>/i;
const oneBrace = new RegExp(String.raw`(?<!\{)\{\s*((?:${formNames.join('|')})\b[^{}]*?)\s*\}(?!\})`, 'i');

/** What is meant as something else than text, and would be printed as it stands: HTML, and references in single braces. */
export function markupProblems({ text }: Pick<ProseSentence, 'text'>, placeAt: PlaceAt): readonly Problem[] {
  const html = tag.exec(text);
  const braces = oneBrace.exec(text);
  return [
    ...(html === null
      ? []
      : [
          makeProblem('markup-in-text', placeAt(html.index), {
            expected: 'Markdown: HTML is printed as it stands',
            found: html[0].slice(0, 80),
            cure: 'Write **bold**, *italics*, [text](https://...) or ![text](picture.jpg), and an empty line between paragraphs.',
          }),
        ]),
    ...(braces === null
      ? []
      : [
          makeProblem('reference-unclosed', placeAt(braces.index), {
            expected: 'two braces at either end of a reference',
            found: braces[0],
            cure: `Write {{ ${braces[1] ?? ''} }}, or write the braces as code.`,
          }),
        ]),
  ];
}
