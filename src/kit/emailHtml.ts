import { escapeXml } from '../prose/escapeXml.ts';
import { mailWords } from '../prose/english/kit/mailWords.ts';
import { spokenSite } from '../prose/contactLink.ts';
import { mailWidth, type EmailParts, type MailFact, type MailImage } from './emailParts.ts';

const sans = "'Source Sans 3',Arial,Helvetica,sans-serif";
const serif = "Literata,Georgia,'Times New Roman',serif";
const ink = '#1d2125';
const second = '#4b5057';
const paper = '#faf8f2';

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

const answerText = `font-family:${serif};font-size:19px;line-height:27px;font-weight:600;color:${ink};`;

function factRow({ label, words }: MailFact, cell = ''): string {
  return row(`<b>${escapeXml(label)}.</b> ${escapeXml(words)}`, text, cell);
}

function interestRow(interest: MailFact): string {
  return factRow(interest, `border-left:4px solid ${ink};`);
}

/** Each main measure: its title and status, its answer, its caution. */
function answerRows(answers: EmailParts['answers']): string {
  return answers
    .map(
      ({ title, status, answer, singleShots, caution }) =>
        heading(mailWords.answerHeading(title, status)) +
        row(escapeXml(answer), answerText) +
        (singleShots === null ? '' : row(escapeXml(singleShots))) +
        (caution === null ? '' : factRow(caution)),
    )
    .join('');
}

function linkRow(report: string): string {
  return row(
    `<a href="${escapeXml(report)}" style="color:#22508a;text-decoration:underline;">${escapeXml(mailWords.wholeReport)}</a>`,
  );
}

function ownSiteRow(ownSite: string | null): string {
  if (ownSite === null) return '';
  const link = `<a href="${escapeXml(ownSite)}" style="color:#22508a;text-decoration:underline;">${escapeXml(spokenSite(ownSite))}</a>`;
  return row(`${escapeXml(mailWords.ownSite)}: ${link}`, secondText);
}

/** The title as a link to the report. */
function titleRow(title: string, report: string): string {
  return (
    `<tr><td style="padding:0 16px 8px 16px;"><h1 style="margin:0;font-family:${serif};font-size:25px;line-height:30px;font-weight:600;color:${ink};">` +
    `<a href="${escapeXml(report)}" style="color:${ink};text-decoration:none;">${escapeXml(title)}</a></h1></td></tr>`
  );
}

/** What opens a mail: who publishes, title, question, interest. */
function openingRows({ publisher, title, question, interest, report }: EmailParts): string {
  return (
    row(escapeXml(publisher), text, 'padding-top:16px;') +
    titleRow(title, report) +
    row(escapeXml(question), secondText) +
    interestRow(interest)
  );
}

const secondText = `font-family:${sans};font-size:16px;line-height:23px;color:${second};`;

/**
 * The e-mail edition: tables for the layout and styles on every element, since mail programs drop style sheets, scripts,
 * SVG and modern layout; whole without its one image. Under 90 kB, where some cut the rest off.
 */
export function emailHtml(parts: EmailParts): string {
  const { title, answers, facts, report, terms } = parts;
  const rows =
    openingRows(parts) +
    answerRows(answers) +
    facts.map((fact) => factRow(fact)).join('') +
    (parts.image === null ? '' : image(parts.image, report)) +
    linkRow(report) +
    row(escapeXml(`${mailWords.notAFitting} ${terms}`.trim()), secondText) +
    ownSiteRow(parts.ownSite);
  return (
    `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">` +
    `<meta name="color-scheme" content="light"><title>${escapeXml(title)}</title></head>` +
    `<body style="margin:0;padding:0;background-color:${paper};">` +
    `<table role="presentation" width="100%" cellpadding="0" cellspacing="0" border="0" style="background-color:${paper};"><tr><td align="center">` +
    `<table role="presentation" width="100%" cellpadding="0" cellspacing="0" border="0" style="max-width:${mailWidth}px;text-align:left;">${rows}</table>` +
    `</td></tr></table></body></html>\n`
  );
}

/** Title, interest, answers, one chart and a link: to paste into a newsletter. A fragment, not a page. */
export function emailBlock(parts: EmailParts): string {
  return (
    `<table role="presentation" width="100%" cellpadding="0" cellspacing="0" border="0" style="max-width:${mailWidth}px;background-color:${paper};">` +
    openingRows(parts) +
    answerRows(parts.answers) +
    (parts.image === null ? '' : image(parts.image, parts.report)) +
    linkRow(parts.report) +
    `</table>\n`
  );
}
