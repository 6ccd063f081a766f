import { createHash } from 'node:crypto';

/** A style sheet or a font by the address that the page names; null where there is none. */
export interface SiteFiles {
  readonly text: (address: string) => string | null;
  readonly bytes: (address: string) => Uint8Array | null;
}

/** No file is larger, bytes: fonts stay out first, then drawings, as `withinLimit` says. */
export const oneFileLimit = 400_000;

/**
 * A built page as one file that needs no other: styles and fonts inside, its own strict content policy, links made
 * absolute; without an address of the site they become plain text.
 *
 * @param origin `https://` and host of the site, or null
 */
export function oneFile(page: string, files: SiteFiles, origin: string | null): string {
  const sheets = [...page.matchAll(/<link rel="stylesheet" href="([^"]+)">/g)].map(
    ([, address = '']) => address,
  );
  const css = sheets.map((address) => files.text(address) ?? '').join('\n');
  const whole = assembled(page, withFonts(css, files), origin);
  return Buffer.byteLength(whole) < oneFileLimit
    ? whole
    : withinLimit(assembled(page, withoutFonts(css) + narrowAlone, origin));
}

/** A drawing for phones that stands at every width, without the wide one beside it. */
const narrowAlone = '.figure .chart-narrow.alone{display:block}';

const noDrawing =
  '<p>The drawing of so many shots is too large for one file. The same in words and numbers stands below it.</p>';

/**
 * A file without fonts made small enough, where it is not: the largest drawings are there once, as for phones, instead
 * of twice; and if that is not enough the largest are left to their words and numbers.
 */
function withinLimit(whole: string): string {
  let file = whole;
  // Drawings hold no div of their own.
  const pairs = [
    ...whole.matchAll(/<div class="chart-wide">[^]*?<\/div>\s*<div class="chart-narrow">[^]*?<\/div>/g),
  ]
    .map(([pair]) => ({ pair, alone: onlyNarrow(pair) }))
    .toSorted((x, y) => y.pair.length - x.pair.length);
  for (const { pair, alone } of pairs) {
    if (Buffer.byteLength(file) < oneFileLimit) return file;
    file = file.replace(pair, () => alone);
  }
  for (const { alone } of pairs) {
    if (Buffer.byteLength(file) < oneFileLimit) return file;
    file = file.replace(alone, () => noDrawing);
  }
  return file;
}

function onlyNarrow(pair: string): string {
  return pair
    .slice(pair.indexOf('<div class="chart-narrow">'))
    .replace('class="chart-narrow"', 'class="chart-narrow alone"');
}

// Astro leaves < and > in the values of attributes as they are; only quotes end a value.
function assembled(page: string, css: string, origin: string | null): string {
  const hash = createHash('sha256').update(css).digest('base64');
  const policy = `default-src 'none'; font-src data:; style-src 'sha256-${hash}'; base-uri 'none'; form-action 'none'`;
  const inside = page
    .replaceAll(/<link rel="(?:stylesheet|icon|alternate)"(?:"[^"]*"|[^">])*>/g, '')
    .replaceAll(/<script type="module"[\s\S]*?<\/script>/g, '')
    // Without script nobody could ask for the other units.
    .replaceAll(/<!--other units-->[\s\S]*?<!--\/other units-->/g, '')
    // Here and not before </head>: a value of an attribute may hold those very letters.
    .replace(
      /(<meta http-equiv="content-security-policy" content=")[^"]*("[^>]*>)/i,
      (_, before: string, after: string) => `${before}${policy}${after}<style>${css}</style>`,
    );
  return inside.replaceAll(
    /<a\b((?:"[^"]*"|[^">])*?)\shref="(\/[^"]*)"((?:"[^"]*"|[^">])*)>([\s\S]*?)<\/a>/g,
    (_, before: string, path: string, after: string, words: string) =>
      origin === null ? `<span>${words}</span>` : `<a${before} href="${origin}${path}"${after}>${words}</a>`,
  );
}

/** Each font face with its woff2 inside; other formats are for browsers that no longer are. */
function withFonts(css: string, { bytes }: SiteFiles): string {
  return css.replaceAll(/@font-face\s*\{[^}]*\}/g, (face) => {
    const address = /url\(["']?([^"')]+\.woff2)["']?\)/.exec(face)?.[1];
    const font = address === undefined ? null : bytes(address);
    if (font === null) return '';
    const data = `url(data:font/woff2;base64,${Buffer.from(font).toString('base64')}) format("woff2")`;
    return face.replace(/src:[^;}]*/, () => `src:${data}`);
  });
}

function withoutFonts(css: string): string {
  return css.replaceAll(/@font-face\s*\{[^}]*\}/g, '');
}
