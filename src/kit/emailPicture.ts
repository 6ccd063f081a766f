import { palette } from '../charts/palette.ts';
import { escapeXml } from '../prose/escapeXml.ts';
import type { EmailPicture } from './emailParts.ts';
import { layoutTable, row } from './emailRows.ts';
import { pictureClasses, textStyles, type Edition } from './emailStyle.ts';

/** Width of a mail, px. */
export const mailWidth = 600;

const border = 1;
const widest = mailWidth - 2 * border;

/** Width of the panel at which the phone form is drawn to be read, px. */
const phoneWidth = 360;

// Letters of an alternative text stand on the picture's own light ground in every theme.
const paper = palette.paper.light;
const alternative = `${textStyles.body}color:${palette.ink.light};`;
const responsive = 'display:block;width:100%;height:auto;border:0;';

interface Image {
  readonly address: string;
  readonly alt: string;
  readonly link: string;
  readonly width: number;
}

/** An image in a link that does not look like one while its words stand in its place. `more` are further attributes. */
function linked({ address, alt, link, width }: Image, css: string, more = ''): string {
  return (
    `<a href="${escapeXml(link)}" style="color:${palette.ink.light};text-decoration:none;">` +
    `<img src="${escapeXml(address)}" alt="${escapeXml(alt)}" width="${width}"${more} style="${css}${alternative}"></a>`
  );
}

/** A panel that stays light in a dark theme, as the picture does, and is seen to mean it. */
function panel(inside: string, width: number): string {
  const style = `padding:0;background-color:${paper};border:${border}px solid ${palette.rule.light};`;
  return row(
    layoutTable(
      `<tr><td bgcolor="${paper}" style="${style}">${inside}</td></tr>`,
      ` width="${width}" align="center" style="width:100%;max-width:${width}px;"`,
    ),
    '0 0 4px 0',
  );
}

/**
 * The picture: its wide form, and its phone form in the same place on a narrow screen.
 *
 * Word-processor engines know neither media queries nor `display:none` (caniemail, css-at-media and css-display-none):
 * they are given the wide one alone, with the height that they need. All others show the wide one, and the phone one
 * instead where they know media queries; webmails and apps that do are many more than those that know `picture` (caniemail,
 * html-picture). No height is set for them: while images are blocked the place is as high as its words.
 */
function pictureRow({ wide, phone, alt, tall }: EmailPicture, link: string): string {
  const image = { alt, link, width: widest };
  const hidden = 'display:none;max-height:0;overflow:hidden;mso-hide:all;';
  const { wide: wideClass, phone: phoneClass } = pictureClasses;
  return panel(
    `<!--[if mso]>${linked({ ...image, address: wide }, 'border:0;', ` height="${Math.round(tall * widest)}"`)}<![endif]-->` +
      `<!--[if !mso]><!--><div class="${wideClass}">${linked({ ...image, address: wide }, responsive)}</div>` +
      `<div class="${phoneClass}" style="${hidden}">${linked({ ...image, address: phone, width: phoneWidth - 2 * border }, responsive)}</div><!--<![endif]-->`,
    mailWidth,
  );
}

/** The picture where no style element goes with it: the phone form, which can be read on both a narrow and a wide screen. */
function pictureAlone({ phone, alt }: EmailPicture, link: string): string {
  return panel(linked({ address: phone, alt, link, width: phoneWidth - 2 * border }, responsive), phoneWidth);
}

export const pictureOfEdition: Readonly<Record<Edition, (picture: EmailPicture, link: string) => string>> = {
  mail: pictureRow,
  block: pictureAlone,
};
