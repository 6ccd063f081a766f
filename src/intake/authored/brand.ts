import { answer, text } from './answers.ts';
import { strict } from './strict.ts';
import type { Schema } from './trouble.ts';

/** What a shop shows of its own, as it stands in `shop.yaml`. */
export interface BrandAnswers {
  /** Names of files beside `shop.yaml`. */
  readonly logo?: string;
  readonly logoDark?: string;
  /** `#rrggbb`, lower case. */
  readonly accent?: { readonly light?: string; readonly dark?: string };
  readonly site?: string;
  readonly booking?: string;
  readonly contact?: string;
}

const logoFile = (what: string): Schema<string> =>
  answer(
    `the name of a file beside shop.yaml with ${what}, as SVG or PNG`,
    (typed) => (/^[^/\\]+\.(?:svg|png)$/i.test(typed) && !typed.startsWith('.') ? typed.normalize() : null),
    'Put the file beside shop.yaml and write its name alone, such as logo.svg.',
    'the name of an SVG or PNG file beside `shop.yaml`',
  );

const colour = (ground: string): Schema<string> =>
  answer(
    `a colour on the ${ground} ground, as six hexadecimal digits`,
    (typed) => (/^#?[0-9a-f]{6}$/i.test(typed) ? `#${typed.replace('#', '').toLowerCase()}` : null),
    'Write red, green and blue with two digits each, such as 7a3b12. With a # before them YAML needs quotes: "#7a3b12".',
    'six hexadecimal digits, such as `7a3b12`',
  ).describe(`the colour on the ${ground} ground`);

const webPage = (what: string): Schema<string> =>
  answer(
    `${what}, such as https://golf.example/`,
    (typed) => {
      if (!/^https?:\/\//i.test(typed) || !URL.canParse(typed)) return null;
      const { href, username, password } = new URL(typed);
      return username === '' && password === '' ? href : null;
    },
    'Write the address from https:// on, as the browser shows it.',
    'a web address, such as `https://golf.example/`',
  ).describe(what);

export const brandAnswers: Schema<BrandAnswers> = strict({
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
