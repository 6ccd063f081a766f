import { escapeXml } from '../prose/escapeXml.ts';
import type { EmailParts } from './emailParts.ts';
import { mailWidth, pictureOfEdition } from './emailPicture.ts';
import {
  actionRow,
  answerRows,
  cautionRow,
  closingRows,
  factRows,
  figureRows,
  interestRow,
  layoutTable,
  titleRows,
  topRow,
} from './emailRows.ts';
import { colourOf, headStyles, painted, type Edition } from './emailStyle.ts';

/** Title, answers, interest, picture and all cautions: what a mail and a block have in common. */
function common(edition: Edition, parts: EmailParts): string {
  const { answers, interest, picture, besidePicture, report } = parts;
  return (
    topRow(edition, parts) +
    titleRows(edition, parts) +
    answerRows(edition, answers) +
    interestRow(edition, interest) +
    (picture === null ? '' : pictureOfEdition[edition](picture, report)) +
    cautionRow(edition, besidePicture)
  );
}

// Word-processor engines know no `max-width` (caniemail, css-max-width), which alone keeps the table to its width elsewhere.
const fixedTable = (inside: string): string =>
  `<!--[if mso]><table role="presentation" align="center" width="${mailWidth}" cellpadding="0" cellspacing="0" border="0"><tr><td width="${mailWidth}"><![endif]-->` +
  `${inside}<!--[if mso]></td></tr></table><![endif]-->`;

/** The column of a mail; paper under it, so that letters and ground are turned together where a program turns colours. */
function column(edition: Edition, rows: string): string {
  return fixedTable(
    layoutTable(
      rows,
      ` width="100%" bgcolor="${colourOf('paper', 'light')}"${painted(edition, ['paper'], `width:100%;max-width:${mailWidth}px;text-align:left;mso-table-lspace:0;mso-table-rspace:0;`)}`,
    ),
  );
}

// Without it such engines scale images and fixed widths with the screen's own setting (from memory).
const officeSettings =
  '<!--[if gte mso 9]><xml><o:OfficeDocumentSettings xmlns:o="urn:schemas-microsoft-com:office:office"><o:PixelsPerInch>96</o:PixelsPerInch></o:OfficeDocumentSettings></xml><![endif]-->';

/**
 * The e-mail edition: tables for the layout and styles on every element, since mail programs drop scripts, SVG and modern
 * layout, and some the style element of the head; whole without its picture. Under 90 kB, as one program cuts off what is
 * over 102 (https://shkspr.mobi/blog/2019/05/102kb-ought-to-be-enough-for-any-email/).
 */
export function emailHtml(parts: EmailParts): string {
  const { title, preheader, figures, facts, report } = parts;
  const rows =
    common('mail', parts) +
    figureRows('mail', figures) +
    factRows('mail', facts) +
    actionRow('mail', report) +
    closingRows('mail', parts);
  const head =
    `<meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">` +
    `<meta name="color-scheme" content="light dark"><meta name="supported-color-schemes" content="light dark">` +
    // Apps that make links of numbers and days paint them blue (from memory).
    `<meta name="format-detection" content="telephone=no,date=no,address=no,email=no">` +
    // The report is the page; this is a copy to be sent.
    `<meta name="robots" content="noindex"><title>${escapeXml(title)}</title>${officeSettings}${headStyles()}`;
  const hidden = 'display:none;max-height:0;overflow:hidden;mso-hide:all;';
  return (
    `<!doctype html><html lang="en"><head>${head}</head>` +
    `<body${painted('mail', ['paper'], 'margin:0;padding:0;')}>` +
    `<div style="${hidden}">${escapeXml(preheader)}</div>` +
    layoutTable(
      `<tr><td align="center" style="padding:0;">${column('mail', rows)}</td></tr>`,
      ` width="100%" bgcolor="${colourOf('paper', 'light')}"${painted('mail', ['paper'], 'width:100%;')}`,
    ) +
    `</body></html>\n`
  );
}

/** Title, answers, interest, picture and a link: to paste into a newsletter. A fragment, not a page. */
export function emailBlock(parts: EmailParts): string {
  return `${column('block', common('block', parts) + actionRow('block', parts.report))}\n`;
}
