import { escapeXml } from '../prose/escapeXml.ts';
import { mailWidth, type EmailParts, type MailImage } from './emailParts.ts';

const sans = "'Source Sans 3',Arial,Helvetica,sans-serif";
const serif = "Literata,Georgia,'Times New Roman',serif";
const ink = '#1d2125';
const second = '#4b5057';
const paper = '#faf8f2';
const rule = '#d9d3c5';

const text = `font-family:${sans};font-size:16px;line-height:23px;color:${ink};`;

/** A paragraph in a row of its own; `words` are HTML. */
function row(words: string, style = text, cell = ''): string {
  return `<tr><td style="padding:0 16px 12px 16px;${cell}"><p style="margin:0;${style}">${words}</p></td></tr>`;
}

function heading(words: string): string {
  return `<tr><td style="padding:16px 16px 4px 16px;"><h2 style="margin:0;font-family:${serif};font-size:18px;line-height:25px;font-weight:600;color:${ink};">${escapeXml(words)}</h2></td></tr>`;
}

function image({ address, alt, height }: MailImage, link: string): string {
  return (
    `<tr><td style="padding:8px 0 12px 0;"><a href="${escapeXml(link)}" style="color:#22508a;">` +
    `<img src="${escapeXml(address)}" alt="${escapeXml(alt)}" width="${mailWidth}" height="${height}" ` +
    `style="display:block;width:100%;max-width:${mailWidth}px;height:auto;border:0;${text}background-color:${paper};"></a></td></tr>`
  );
}

function interestRow(interest: string): string {
  return row(`<b>Our interest.</b> ${escapeXml(interest)}`, text, `border-left:4px solid ${ink};`);
}

function linkRow(report: string, words: string): string {
  return row(
    `<a href="${escapeXml(report)}" style="color:#22508a;text-decoration:underline;">${escapeXml(words)}</a>`,
  );
}

/**
 * The e-mail edition: tables for the layout and styles on every element, since mail programs drop style sheets, scripts,
 * SVG and modern layout; whole without its one image. Under 90 kB, where some cut the rest off.
 */
export function emailHtml(parts: EmailParts): string {
  const { publisher, title, question, interest, answer, amounts, whom, mind, gaps, report, terms } = parts;
  const gapTable = ({ of, rows: pairs }: (typeof gaps)[number]): string =>
    `<tr><td style="padding:0 16px 12px 16px;"><table width="100%" cellpadding="0" cellspacing="0" border="0" style="border-collapse:collapse;">` +
    `<caption style="text-align:left;padding:0 0 4px 0;${text}color:${second};">${escapeXml(of === '' ? '' : `${of}. `)}Pair by pair, with all that would fit these shots</caption>` +
    pairs
      .map(
        (gap) =>
          `<tr><th scope="row" align="left" valign="top" width="50%" style="padding:8px 12px 8px 0;border-bottom:1px solid ${rule};font-weight:400;${text}">${escapeXml(gap.answer)}</th>` +
          `<td align="left" valign="top" style="padding:8px 0;border-bottom:1px solid ${rule};${text}">${escapeXml(gap.numbers)}</td></tr>`,
      )
      .join('') +
    `</table></td></tr>`;
  const rows = [
    row(escapeXml(publisher), text, 'padding-top:16px;'),
    `<tr><td style="padding:0 16px 8px 16px;"><h1 style="margin:0;font-family:${serif};font-size:25px;line-height:30px;font-weight:600;color:${ink};">${escapeXml(title)}</h1></td></tr>`,
    row(escapeXml(question), `${text}color:${second};`),
    interestRow(interest),
    heading('The answer'),
    row(
      escapeXml(answer),
      `font-family:${serif};font-size:19px;line-height:27px;font-weight:600;color:${ink};`,
    ),
    ...(amounts === '' ? [] : [row(`<b>How much.</b> ${escapeXml(amounts)}`)]),
    row(`<b>For whom.</b> ${escapeXml(whom)}`),
    ...(mind === '' ? [] : [row(`<b>Mind.</b> ${escapeXml(mind)}`)]),
    ...(parts.image === null ? [] : [image(parts.image, report)]),
    heading('How far apart?'),
    ...gaps.map(gapTable),
    linkRow(report, 'All shots, conditions and numbers'),
    row(
      escapeXml(`A comparison is not a fitting; try clubs with a qualified fitter. ${terms}`.trim()),
      `${text}color:${second};`,
    ),
  ].join('');
  return (
    `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">` +
    `<meta name="color-scheme" content="light"><title>${escapeXml(title)}</title></head>` +
    `<body style="margin:0;padding:0;background-color:${paper};">` +
    `<table role="presentation" width="100%" cellpadding="0" cellspacing="0" border="0" style="background-color:${paper};"><tr><td align="center">` +
    `<table role="presentation" width="100%" cellpadding="0" cellspacing="0" border="0" style="max-width:${mailWidth}px;text-align:left;">${rows}</table>` +
    `</td></tr></table></body></html>\n`
  );
}

/** Interest, answer, one chart and a link: to paste into a newsletter. A fragment, not a page. */
export function emailBlock({
  interest,
  answerAlone,
  whom,
  mind,
  image: chart,
  report,
  publisher,
  question,
}: EmailParts): string {
  return (
    `<table role="presentation" width="100%" cellpadding="0" cellspacing="0" border="0" style="max-width:${mailWidth}px;background-color:${paper};">` +
    row(escapeXml(`${publisher}. ${question}`), `${text}color:${second};`, 'padding-top:12px;') +
    interestRow(interest) +
    row(
      escapeXml(answerAlone),
      `font-family:${serif};font-size:19px;line-height:27px;font-weight:600;color:${ink};`,
    ) +
    row(escapeXml(`${whom} ${mind}`.trim())) +
    (chart === null ? '' : image(chart, report)) +
    linkRow(report, 'The whole report') +
    `</table>\n`
  );
}
