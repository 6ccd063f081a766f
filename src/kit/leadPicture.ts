import type { ClearGround } from './clearGround.ts';
import { cardLayout, type Card } from './cardLayout.ts';
import { stripSentences } from './caveatStrip.ts';
import { exportedSvg } from './exportedSvg.ts';
import type { LeadForm } from './exportForms.ts';
import { kitOf } from './kitOf.ts';
import { lowerThird } from './lowerThird.ts';
import type { Report } from './report.ts';
import { textOf } from './said.ts';
import { findingTitle, shareCardAlt } from './shareCardWords.ts';
import { square, upright } from './socialForms.ts';
import { safeEdge, safeSide, video, videoHeight, videoWidth } from './videoForms.ts';

/** A form of a report's first chart as it is made elsewhere, whose colours are values. */
type LeadPicture = OnPaper | OnNothing | Outlined;

interface Named {
  readonly svg: string;
  /** What is drawn of `svg`, px. */
  readonly width: number;
  readonly height: number;
  /** The finding in one line, and all that the picture says, for those who cannot see it. */
  readonly title: string;
  readonly alt: string;
}

/** A PNG with ground. */
interface OnPaper extends Named {
  readonly kind: 'png';
}

/** A PNG of `on.width` x `on.height` px that is clear but for the drawing, whose top left corner stands at a place. */
interface OnNothing extends Named {
  readonly kind: 'clear-png';
  readonly on: ClearGround;
}

/** An SVG whose letters are to be made outlines, so that it needs no font. */
interface Outlined extends Named {
  readonly kind: 'outlined-svg';
  /** Width on paper, mm. */
  readonly widthMm: number;
}

/**
 * The whole width of text of an A4 page with margins of 15 mm. The least letters of a wide chart, 14 px of 768, are then
 * 3.3 mm high, 9.3 points.
 */
const printWidthMm = 180;

/**
 * A form of a report's first chart. All but the print are about the first main measure, as the card of a shared link
 * is, and of a report that was taken back they are a notice.
 *
 * @throws where a print is asked for and the report gives no chart away
 */
export function leadPicture(report: Report, form: LeadForm): LeadPicture {
  switch (form) {
    case 'square':
      return onPaper(report, cardLayout(report, square));
    case 'upright':
      return onPaper(report, cardLayout(report, upright));
    case 'video':
      return onPaper(report, cardLayout(report, video));
    case 'lower-third': {
      const card = lowerThird(report);
      const top = videoHeight - safeEdge - card.height;
      const on = { width: videoWidth, height: videoHeight, left: safeSide, top };
      return { ...onPaper(report, card), kind: 'clear-png', on };
    }
    case 'print':
      return print(report);
  }
}

function onPaper(report: Report, { svg, width, height }: Card): OnPaper {
  return { kind: 'png', svg, width, height, title: findingTitle(report), alt: shareCardAlt(report) };
}

function print(report: Report): Outlined {
  const [lead] = kitOf(report).offered;
  if (lead === undefined) throw new Error(`${report.source.slug} gives no chart away.`);
  const { figure, headline: title, alt } = lead;
  const svg = exportedSvg(report, figure);
  const side = (name: string): number =>
    Number(new RegExp(`^<svg[^>]*\\s${name}="([\\d.]+)"`).exec(svg)?.[1]);
  const strip = textOf(stripSentences(report, figure, () => true));
  return {
    kind: 'outlined-svg',
    svg,
    width: side('width'),
    height: side('height'),
    widthMm: printWidthMm,
    title,
    alt: `${alt} ${strip}`,
  };
}
