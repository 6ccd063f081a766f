import { palette } from '../charts/palette.ts';
import { wrapText, type Weight } from '../charts/textWidth.ts';
import { escapeXml } from '../prose/escapeXml.ts';
import { sayWithdrawn } from '../prose/english/kit/withdrawn.ts';
import { absoluteAddress, spokenAddress } from './absoluteAddress.ts';
import { exportWidth } from './exportedSvg.ts';
import { publisherOf } from './interestInShort.ts';
import type { Report } from './report.ts';

const margin = 24;
/** Letters of another font may be a tenth wider. */
const room = (exportWidth - 2 * margin) * 0.9;

interface Lines {
  readonly text: string;
  readonly size: number;
  readonly weight: Weight;
  readonly serif: boolean;
  /** px of paper over the first line */
  readonly above: number;
}

/**
 * What stands at the address of a picture whose report was withdrawn, as pages and mails of others go on showing it: an
 * SVG in the look of the charts that left the report. Null for any other report.
 */
export function noticePicture(report: Report): string | null {
  const { source } = report;
  const words = sayWithdrawn(source);
  if (words === null) return null;
  const address = absoluteAddress(source.shop)?.(`/reports/${source.slug}/`);
  const small = { size: 16, weight: 400, serif: false } as const;
  const set = laidOut([
    { text: `${words.heading}.`, size: 30, weight: 600, serif: true, above: 0 },
    { text: source.front.title, size: 19, weight: 600, serif: true, above: 10 },
    { text: `${words.gone} ${words.reason}`, size: 19, weight: 400, serif: false, above: 10 },
    {
      text: [publisherOf(report), ...(address === undefined ? [] : [`see ${spokenAddress(address)}`])].join(
        ': ',
      ),
      ...small,
      above: 14,
    },
  ]);
  const name = 'withdrawn';
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${exportWidth}" height="${set.height}" viewBox="0 0 ${exportWidth} ${set.height}" role="img" aria-labelledby="${name}-title">` +
    `<title id="${name}-title">${escapeXml(`${words.heading}. ${words.reason}`)}</title>` +
    `<rect width="${exportWidth}" height="${set.height}" fill="${palette.paper.light}"/>` +
    `<rect x="0" y="0" width="${exportWidth}" height="6" fill="${palette.ink.light}"/>` +
    `${set.marks}</svg>\n`
  );
}

function laidOut(blocks: readonly Lines[]): { readonly height: number; readonly marks: string } {
  let y = margin;
  const marks = blocks.map(({ text, size, weight, serif, above }) => {
    const leading = Math.round(size * 1.32);
    y += above;
    const lines = wrapText(text, size * (serif ? 1.24 : 1), weight, room).map((line) => {
      const baseline = y + size;
      y += leading;
      return `<text x="${margin}" y="${baseline}">${escapeXml(line)}</text>`;
    });
    const family = serif ? 'Literata, Georgia, serif' : "'Source Sans 3', system-ui, sans-serif";
    return `<g font-family="${family}" font-size="${size}" font-weight="${weight}" fill="${palette.ink.light}">${lines.join('')}</g>`;
  });
  return { height: y + margin, marks: marks.join('') };
}
