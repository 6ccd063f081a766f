import { palette, type Ground, type Token } from '../charts/palette.ts';

/** Where the HTML goes: a whole mail with a style element in its head, or a block that has none to be pasted. */
export type Edition = 'mail' | 'block';

/** A colour that a mail turns for a dark theme; the panel under the picture is none, as the picture stays light. */
type Paint = 'paper' | 'ink' | 'soft' | 'link' | 'edge' | 'action' | 'on-action';

const paints: Readonly<
  Record<
    Paint,
    { readonly property: 'color' | 'background-color' | 'border-left-color'; readonly token: Token }
  >
> = {
  paper: { property: 'background-color', token: 'paper' },
  ink: { property: 'color', token: 'ink' },
  soft: { property: 'color', token: 'ink-2' },
  link: { property: 'color', token: 'link' },
  // Seen on both grounds, also where a program turns the ground alone.
  edge: { property: 'border-left-color', token: 'axis' },
  action: { property: 'background-color', token: 'link' },
  'on-action': { property: 'color', token: 'paper' },
};

// Families that word-processor engines have come first: an unknown first one makes them set Times New Roman
// (https://medium.com/emails-hteumeuleu/today-i-learned-about-mso-generic-font-family-85b0e4703079).
const sans = 'font-family:Arial,Helvetica,sans-serif;';
const serif = "font-family:Georgia,'Times New Roman',serif;";

// Without the rule such engines take a line height for the least (from memory).
const lines = (size: number, height: number): string =>
  `font-size:${size}px;line-height:${height}px;mso-line-height-rule:exactly;`;

/** How each kind of text is set. */
export const textStyles = {
  body: `${sans}${lines(16, 24)}`,
  note: `${sans}${lines(14, 21)}`,
  title: `${serif}${lines(26, 32)}font-weight:bold;`,
  heading: `${sans}${lines(16, 24)}font-weight:bold;`,
  answer: `${serif}${lines(20, 28)}`,
  figure: `${serif}${lines(20, 26)}font-weight:bold;`,
  action: `${sans}${lines(16, 20)}font-weight:bold;`,
} as const;

/** The colours of an element's light theme, with whatever else is its style; in a mail also the class that turns them. */
export function painted(edition: Edition, of: readonly Paint[], css: string): string {
  const own = of.map((paint) => `${paints[paint].property}:${colourOf(paint, 'light')};`).join('');
  const classes = edition === 'mail' ? ` class="${of.map(classOf).join(' ')}"` : '';
  return `${classes} style="${css}${own}"`;
}

export function colourOf(paint: Paint, ground: Ground): string {
  return palette[paints[paint].token][ground];
}

const classOf = (paint: Paint): string => `mail-${paint}`;

/** Classes of the two forms of the picture. */
export const pictureClasses = { wide: 'mail-wide', phone: 'mail-phone' } as const;

/** From this width on the wide form of the picture is shown, px. */
const phoneWidth = 480;

/**
 * What a mail's head adds to the styles on its elements, where a program knows it; nothing rests on it. Apart from each
 * other, as some drop an element for one rule that they refuse (https://github.com/hteumeuleu/caniemail/issues/144).
 */
export function headStyles(): string {
  const dark = (Object.keys(paints) as Paint[]).map((paint) => ({ paint, ...paints[paint] }));
  const rule = ({ paint, property }: (typeof dark)[number], before = ''): string =>
    `${before}.${classOf(paint)}{${property}:${colourOf(paint, 'dark')}!important}`;
  // A webmail that recolours marks what it changed by these attributes, which its own rules can be met with
  // (https://www.hteumeuleu.com/2019/dealing-with-outlook-com-s-dark-mode/).
  const recoloured = dark.map((one) =>
    rule(one, one.property === 'background-color' ? '[data-ogsb] ' : '[data-ogsc] '),
  );
  const { wide, phone } = pictureClasses;
  return [
    ':root{color-scheme:light dark;supported-color-schemes:light dark}',
    `@media only screen and (max-width:${phoneWidth}px){.${wide}{display:none!important}` +
      `.${phone}{display:block!important;max-height:none!important;overflow:visible!important}}`,
    `@media (prefers-color-scheme:dark){${dark.map((one) => rule(one)).join('')}}`,
    recoloured.join(''),
  ]
    .map((css) => `<style>${css}</style>`)
    .join('');
}
