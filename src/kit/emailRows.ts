import { mailWords, type MailFigure } from '../prose/english/kit/mailWords.ts';
import { escapeXml } from '../prose/escapeXml.ts';
import { spokenSite } from '../prose/contactLink.ts';
import type { EmailParts, MailFact } from './emailParts.ts';
import { colourOf, painted, textStyles, type Edition } from './emailStyle.ts';

/** A table that lays out and holds no data; `more` are further attributes. */
export const layoutTable = (rows: string, more = ''): string =>
  `<table role="presentation" cellpadding="0" cellspacing="0" border="0"${more}>${rows}</table>`;

// Room is made by the padding of cells alone: other elements have none in word-processor engines, and in a row of several
// cells the greatest above and below counts for all (caniemail, css-padding).
const side = '16px';

/** A row of one cell; `inside` is HTML. */
export function row(inside: string, padding: string, more = ''): string {
  return `<tr><td style="padding:${padding};${more}">${inside}</td></tr>`;
}

type Kind = keyof typeof textStyles;

/** A paragraph in a row of its own; `words` are HTML. */
function paragraph(edition: Edition, words: string, kind: Kind = 'body', below = '12px'): string {
  const paint = kind === 'note' ? 'soft' : 'ink';
  return row(
    `<p${painted(edition, [paint], `margin:0;${textStyles[kind]}`)}>${words}</p>`,
    `0 ${side} ${below} ${side}`,
  );
}

function link(edition: Edition, address: string, words: string): string {
  return `<a href="${escapeXml(address)}"${painted(edition, ['link'], 'text-decoration:underline;')}>${escapeXml(words)}</a>`;
}

const factWords = ({ label, words }: MailFact): string => `<b>${escapeXml(label)}.</b> ${escapeXml(words)}`;

/** What to keep in mind; no row where there is nothing. */
export function cautionRow(edition: Edition, cautions: readonly string[]): string {
  return cautions.length === 0
    ? ''
    : paragraph(edition, factWords({ label: mailWords.caution, words: cautions.join(' ') }));
}

/** Who publishes, and where a program shows the mail badly the way out of it. */
export function topRow(edition: Edition, { publisher, report }: EmailParts): string {
  const browser = edition === 'mail' ? ` &nbsp; ${link(edition, report, mailWords.inBrowser)}` : '';
  return row(
    `<p${painted(edition, ['soft'], `margin:0;${textStyles.note}`)}>${escapeXml(publisher)}${browser}</p>`,
    `16px ${side} 12px ${side}`,
  );
}

/** The title as a link to the report, the question, how the report stands and its day. */
export function titleRows(edition: Edition, { title, question, standing, day, report }: EmailParts): string {
  const heading =
    `<h1${painted(edition, ['ink'], `margin:0;${textStyles.title}`)}>` +
    `<a href="${escapeXml(report)}"${painted(edition, ['ink'], 'text-decoration:none;')}>${escapeXml(title)}</a></h1>`;
  return (
    row(heading, `0 ${side} 8px ${side}`) +
    paragraph(edition, escapeXml(question)) +
    paragraph(edition, `${standing === '' ? '' : `<b>${escapeXml(standing)}</b> `}${escapeXml(day)}`)
  );
}

/** Each main measure under its own heading, with what to keep in mind. */
export function answerRows(edition: Edition, answers: EmailParts['answers']): string {
  return answers
    .map(
      ({ heading, words, cautions }) =>
        row(
          `<h2${painted(edition, ['ink'], `margin:0;${textStyles.heading}`)}>${escapeXml(heading)}</h2>`,
          `8px ${side} 2px ${side}`,
        ) +
        paragraph(edition, escapeXml(words), 'answer', '8px') +
        cautionRow(edition, cautions),
    )
    .join('');
}

/** The interest, behind a bar of its own. */
export function interestRow(edition: Edition, interest: MailFact): string {
  const bar = painted(edition, ['edge'], 'padding:0 0 0 12px;border-left-width:4px;border-left-style:solid;');
  const words = `<p${painted(edition, ['ink'], `margin:0;${textStyles.body}`)}>${factWords(interest)}</p>`;
  return row(layoutTable(`<tr><td${bar}>${words}</td></tr>`, ' width="100%"'), `4px ${side} 16px ${side}`);
}

/** Numbers beside what each is of, one under the other: three columns would not fit a phone. */
export function figureRows(edition: Edition, figures: readonly MailFigure[]): string {
  const cell = (words: string, kind: Kind, width: string, left: string): string =>
    `<td width="${width}" valign="top" style="width:${width};padding:0 0 10px ${left};">` +
    `<p${painted(edition, ['ink'], `margin:0;${textStyles[kind]}`)}>${escapeXml(words)}</p></td>`;
  const rows = figures.map(
    ({ value, label }) =>
      `<tr>${cell(value, 'figure', '32%', '0')}${cell(label, 'body', '68%', '12px')}</tr>`,
  );
  return rows.length === 0
    ? ''
    : row(layoutTable(rows.join(''), ' width="100%"'), `12px ${side} 8px ${side}`);
}

export function factRows(edition: Edition, facts: readonly MailFact[]): string {
  return facts.map((fact) => paragraph(edition, factWords(fact))).join('');
}

/**
 * The way to the report as a button: a coloured cell, which every program draws. Programs that pad no links take the
 * padding of the cell, the others that of the link, so that all of it can be pressed
 * (https://idigemail.com/297-2 on `mso-padding-alt`).
 */
export function actionRow(edition: Edition, report: string): string {
  const cell = painted(edition, ['action'], 'mso-padding-alt:12px 20px;');
  const inside = painted(
    edition,
    ['on-action'],
    `display:inline-block;padding:12px 20px;${textStyles.action}text-decoration:none;`,
  );
  const button = `<a href="${escapeXml(report)}"${inside}>${escapeXml(mailWords.wholeReport)}</a>`;
  return row(
    layoutTable(`<tr><td bgcolor="${colourOf('action', 'light')}"${cell}>${button}</td></tr>`),
    `8px ${side} 20px ${side}`,
  );
}

/** What closes a mail: that it is no fitting, terms, the shop's own site, and the place for what the law asks of the sender. */
export function closingRows(edition: Edition, { terms, ownSite }: EmailParts): string {
  const site =
    ownSite === null ? '' : `${escapeXml(mailWords.ownSite)}: ${link(edition, ownSite, spokenSite(ownSite))}`;
  return (
    paragraph(edition, escapeXml(`${mailWords.notAFitting} ${terms}`.trim()), 'note') +
    (site === '' ? '' : paragraph(edition, site, 'note')) +
    mailWords.toFill
      .map((place) => paragraph(edition, `<!-- To fill in: -->${escapeXml(place)}<!-- end -->`, 'note'))
      .join('')
  );
}
