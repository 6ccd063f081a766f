import type { z } from 'zod';
import { answer, meaning, text, typed } from './answers.ts';
import { strict } from './strict.ts';
import type { Schema } from './trouble.ts';

const logoFile = (what: string): Schema<string> =>
  answer(
    typed.regex(/^[^./\\][^/\\]*\.(?:[Ss][Vv][Gg]|[Pp][Nn][Gg])$/).normalize(),
    {
      expected: `the name of a file beside shop.yaml with ${what}, as SVG or PNG`,
      cure: 'Put the file beside shop.yaml and write its name alone, such as logo.svg.',
    },
    'the name of an SVG or PNG file beside `shop.yaml`',
  );

/** `#rrggbb`, lower case. */
const colour = (ground: string): Schema<string> =>
  answer(
    typed.regex(/^#?[0-9a-fA-F]{6}$/).transform((digits) => `#${digits.replace('#', '').toLowerCase()}`),
    {
      expected: `a colour on the ${ground} ground, as six hexadecimal digits`,
      cure: 'Write red, green and blue with two digits each, such as 7a3b12. With a # before them YAML needs quotes: "#7a3b12".',
    },
    'six hexadecimal digits, such as `7a3b12`',
  ).describe(`the colour on the ${ground} ground`);

const webPage = (what: string): Schema<string> =>
  answer(
    meaning((typed) => {
      if (!/^https?:\/\//i.test(typed) || !URL.canParse(typed)) return null;
      const { href, username, password } = new URL(typed);
      return username === '' && password === '' ? href : null;
    }),
    {
      expected: `${what}, such as https://golf.example/`,
      cure: 'Write the address from https:// on, as the browser shows it.',
    },
    'a web address, such as `https://golf.example/`',
    { type: 'string', pattern: '^\\s*[Hh][Tt][Tt][Pp][Ss]?://' },
  ).describe(what);

/** What a shop shows of its own, as it stands in `shop.yaml`. */
export const brandAnswers = strict({
  logo: logoFile('the logo').describe('the logo, shown at the head of every page').exactOptional(),
  logo_dark: logoFile('the logo for the dark ground')
    .describe('another one for the dark ground; the same if left out')
    .exactOptional(),
  accent: strict({
    light: colour('light').exactOptional(),
    dark: colour('dark').exactOptional(),
  })
    .describe('the colour of links and of what has the focus; charts keep theirs')
    .exactOptional(),
  site: webPage('the address of the shop’s own site').exactOptional(),
  booking: webPage('where a visit is booked').exactOptional(),
  contact: text(
    'how a customer reaches the shop: an e-mail address, a telephone number or a page',
  ).exactOptional(),
});

export type BrandAnswers = z.infer<typeof brandAnswers>;
