import { createHash } from 'node:crypto';
import { escapeXml } from '../prose/escapeXml.ts';
import { drawings, narrowAlone } from './drawnTwice.ts';
import { applyEdits, type Edit } from './htmlEdits.ts';
import {
  attribute,
  endTagOf,
  placeOf,
  placeOfAttribute,
  type Element,
  type ReadPage,
} from './htmlElements.ts';
import { withFonts, withoutFonts } from './insideFonts.ts';
import { pictureIn, sourceIn } from './insidePictures.ts';
import { withinLimit } from './withinLimit.ts';

/** A style sheet, font or picture by the address that the page names; null where there is none. */
export interface SiteFiles {
  readonly text: (address: string) => string | null;
  readonly bytes: (address: string) => Uint8Array | null;
}

/** No file is larger, bytes: fonts stay out first, then pictures, then drawings, as `withinLimit` says. */
export const oneFileLimit = 600_000;

/** The elements that have to be read of a page for this. */
export const concernedInOneFile: ReadonlySet<string> = new Set(
  'a body div img link meta picture script source style svg'.split(' '),
);

/**
 * A built page as one file that needs no other: styles, fonts and pictures inside, its own strict content policy, links
 * made absolute; without an address of the site they become plain text. What is not changed stays as it is, letter by
 * letter: who read the page says where each thing stands.
 *
 * @param origin `https://` and host of the site, or null
 * @param within where a link leads within the page, null where elsewhere
 * @throws Error where the page has no content policy to put another in the place of
 */
export function oneFile(
  page: ReadPage,
  files: SiteFiles,
  origin: string | null,
  within: (path: string) => string | null = () => null,
): string {
  const { html, elements } = page;
  const css = elements
    .filter((element) => isStyleSheet(element) || isStyle(element))
    .map((element) =>
      isStyle(element)
        ? html.slice(element.startTag.end, endTagOf(element).start)
        : (files.text(attribute(element, 'href') ?? '') ?? ''),
    )
    .join('\n');
  const pictures = elements
    .filter(({ tagName }) => tagName === 'img')
    .map((img) => pictureIn(img, files.bytes));
  const sources = elements
    .filter(({ tagName }) => tagName === 'source')
    .map((source) => sourceIn(source, files.bytes));
  const always = [...leftOut(elements), ...otherUnits(page), ...links(elements, origin, within), ...sources];
  const written = (style: string, edits: readonly Edit[]): string => {
    const data = edits.some(({ words }) => words.startsWith('src="data:'));
    return applyEdits(html, [...always, ...policyAndStyle(elements, style, data), ...edits]);
  };
  const whole = written(
    withFonts(css, files.bytes),
    pictures.map(({ inside }) => inside),
  );
  return Buffer.byteLength(whole) < oneFileLimit
    ? whole
    : withinLimit(oneFileLimit, pictures, drawings(elements), (edits) =>
        written(withoutFonts(css) + narrowAlone, edits),
      );
}

/** Links to files that stay behind, scripts that would ask for them, and styles, which all go into one place. */
function leftOut(elements: readonly Element[]): readonly Edit[] {
  return elements
    .filter(
      (element) =>
        (element.tagName === 'link' &&
          /^(stylesheet|icon|alternate|preload)$/.test(attribute(element, 'rel') ?? '')) ||
        (element.tagName === 'script' && attribute(element, 'type') === 'module') ||
        isStyle(element),
    )
    .map((element) => ({ ...placeOf(element), words: '' }));
}

function isStyleSheet(element: Element): boolean {
  return element.tagName === 'link' && attribute(element, 'rel') === 'stylesheet';
}

/** A style element of the page; what a drawing brings stays in it. */
function isStyle(element: Element): boolean {
  if (element.tagName !== 'style') return false;
  let around = element.parent;
  while (around !== null && around.tagName !== 'svg') around = around.parent;
  return around === null;
}

/** What stands between the marks of the other units, which cannot be asked for without script. */
function otherUnits({ html, comments }: ReadPage): readonly Edit[] {
  const edits: Edit[] = [];
  let open: number | null = null;
  for (const { start, end } of comments) {
    const comment = html.slice(start, end);
    if (comment === '<!--other units-->') open ??= start;
    if (comment === '<!--/other units-->' && open !== null) {
      edits.push({ start: open, end, words: '' });
      open = null;
    }
  }
  return edits;
}

function links(
  elements: readonly Element[],
  origin: string | null,
  within: (path: string) => string | null,
): readonly Edit[] {
  return elements.flatMap((element) => {
    const path = element.tagName === 'a' ? attribute(element, 'href') : null;
    if (path === null) return [];
    const address = within(path) ?? (path.startsWith('/') && origin !== null ? origin + path : null);
    if (address !== null)
      return [{ ...placeOfAttribute(element, 'href'), words: `href="${escapeXml(address)}"` }];
    if (!path.startsWith('/')) return [];
    return [
      { ...element.startTag, words: '<span>' },
      { ...endTagOf(element), words: '</span>' },
    ];
  });
}

function policyAndStyle(elements: readonly Element[], css: string, pictures: boolean): readonly Edit[] {
  const meta = elements.find(
    (element) =>
      element.tagName === 'meta' &&
      attribute(element, 'http-equiv')?.toLowerCase() === 'content-security-policy',
  );
  if (meta === undefined) throw new Error('The page has no content security policy.');
  const hash = createHash('sha256').update(css).digest('base64');
  const policy = [
    "default-src 'none'",
    'font-src data:',
    ...(pictures ? ['img-src data:'] : []),
    `style-src 'sha256-${hash}'`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
  const { end } = placeOf(meta);
  return [
    { ...placeOfAttribute(meta, 'content'), words: `content="${policy}"` },
    // The page itself is what searches should find.
    { start: end, end, words: `<meta name="robots" content="noindex"><style>${css}</style>` },
  ];
}
