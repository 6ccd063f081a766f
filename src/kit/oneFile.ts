import { createHash } from 'node:crypto';
import { escapeXml } from '../prose/escapeXml.ts';
import {
  applyEdits,
  attribute,
  isElement,
  nodesOf,
  placeOf,
  placeOfAttribute,
  placeOfTags,
  type Edit,
  type Element,
  type Node,
} from './htmlEdits.ts';

/** A style sheet, font or picture by the address that the page names; null where there is none. */
export interface SiteFiles {
  readonly text: (address: string) => string | null;
  readonly bytes: (address: string) => Uint8Array | null;
}

/** No file is larger, bytes: fonts stay out first, then pictures, then drawings, as `withinLimit` says. */
export const oneFileLimit = 400_000;

/**
 * A built page as one file that needs no other: styles, fonts and pictures inside, its own strict content policy, links
 * made absolute; without an address of the site they become plain text. What is not changed stays as it is, letter by
 * letter: the parser says where each thing stands.
 *
 * @param origin `https://` and host of the site, or null
 * @throws Error where the page has no content policy to put another in the place of
 */
export function oneFile(page: string, files: SiteFiles, origin: string | null): string {
  const nodes = nodesOf(page);
  const elements = nodes.filter(isElement);
  const css = elements
    .filter(isStyleSheet)
    .map((link) => files.text(attribute(link, 'href') ?? '') ?? '')
    .join('\n');
  const pictures = elements.filter(({ tagName }) => tagName === 'img').map((img) => pictureIn(img, files));
  const always = [...leftOut(elements), ...otherUnits(nodes), ...links(elements, origin)];
  const written = (style: string, edits: readonly Edit[]): string => {
    const data = edits.some(({ words }) => words.startsWith('src="data:'));
    return applyEdits(page, [...always, ...policyAndStyle(elements, style, data), ...edits]);
  };
  const whole = written(
    withFonts(css, files),
    pictures.map(({ inside }) => inside),
  );
  return Buffer.byteLength(whole) < oneFileLimit
    ? whole
    : withinLimit(pictures, drawings(elements), (edits) => written(withoutFonts(css) + narrowAlone, edits));
}

/** A drawing for phones that stands at every width, without the wide one beside it. */
const narrowAlone = '.figure .chart-narrow.alone{display:block}';

const noDrawing =
  '<p>The drawing of so many shots is too large for one file. The same in words and numbers stands below it.</p>';

/**
 * A file without fonts made small enough, where it is not: the largest pictures give way to their words; then the
 * largest drawings are there once, as for phones, instead of twice; and if that is not enough the largest are left to
 * their words and numbers.
 */
function withinLimit(
  pictures: readonly Picture[],
  drawn: readonly Drawing[],
  written: (edits: readonly Edit[]) => string,
): string {
  // What stands in the place of each, smaller from step to step.
  const places: Edit[][] = [...pictures.map(({ inside }) => [inside]), ...drawn.map(() => [])];
  const steps = [
    ...largestFirst(pictures).map(({ at, of }) => ({ at, edits: [of.inWords] })),
    ...largestFirst(drawn).map(({ at, of }) => ({ at: pictures.length + at, edits: of.once })),
    ...largestFirst(drawn).map(({ at, of }) => ({ at: pictures.length + at, edits: [of.inWords] })),
  ];
  let file = written(places.flat());
  for (const { at, edits } of steps) {
    if (Buffer.byteLength(file) < oneFileLimit) return file;
    places[at] = [...edits];
    file = written(places.flat());
  }
  return file;
}

function largestFirst<Of extends { readonly size: number }>(
  all: readonly Of[],
): readonly { readonly at: number; readonly of: Of }[] {
  return all.map((of, at) => ({ at, of })).toSorted((x, y) => y.of.size - x.of.size);
}

interface Picture {
  readonly inside: Edit;
  readonly inWords: Edit;
  /** Bytes. */
  readonly size: number;
}

/** A picture as part of the file, or as the words that stand for it where there is no such file. */
function pictureIn(img: Element, files: SiteFiles): Picture {
  const address = attribute(img, 'src') ?? '';
  const bytes = files.bytes(address);
  const inWords = { ...placeOf(img), words: `<span>${escapeXml(attribute(img, 'alt') ?? '')}</span>` };
  if (bytes === null) return { inside: inWords, inWords, size: 0 };
  const type = /\.(\w+)$/.exec(address)?.[1] ?? 'webp';
  const data = `src="data:image/${type};base64,${Buffer.from(bytes).toString('base64')}"`;
  return { inside: { ...placeOfAttribute(img, 'src'), words: data }, inWords, size: bytes.length };
}

interface Drawing {
  readonly once: readonly Edit[];
  readonly inWords: Edit;
  /** Letters. */
  readonly size: number;
}

/** Every drawing that is there twice, as for desks and as for phones. */
function drawings(elements: readonly Element[]): readonly Drawing[] {
  return elements.flatMap((wide) => {
    const narrow = hasClass(wide, 'chart-wide') ? nextElement(wide) : null;
    if (narrow === null || !hasClass(narrow, 'chart-narrow')) return [];
    const [{ start }, { start: from, end }] = [placeOf(wide), placeOf(narrow)];
    return [
      {
        once: [
          { start, end: from, words: '' },
          { ...placeOfAttribute(narrow, 'class'), words: 'class="chart-narrow alone"' },
        ],
        inWords: { start, end, words: noDrawing },
        size: end - start,
      },
    ];
  });
}

function hasClass(element: Element, name: string): boolean {
  return attribute(element, 'class')?.split(' ').includes(name) ?? false;
}

function nextElement(element: Element): Element | null {
  const siblings = element.parentNode?.childNodes ?? [];
  const after = siblings.slice(siblings.indexOf(element) + 1);
  return after.find(isElement) ?? null;
}

/** Links to files that stay behind, and scripts that would ask for them. */
function leftOut(elements: readonly Element[]): readonly Edit[] {
  return elements
    .filter(
      (element) =>
        (element.tagName === 'link' &&
          /^(stylesheet|icon|alternate)$/.test(attribute(element, 'rel') ?? '')) ||
        (element.tagName === 'script' && attribute(element, 'type') === 'module'),
    )
    .map((element) => ({ ...placeOf(element), words: '' }));
}

function isStyleSheet(element: Element): boolean {
  return element.tagName === 'link' && attribute(element, 'rel') === 'stylesheet';
}

/** What stands between the marks of the other units: without script nobody could ask for them. */
function otherUnits(nodes: readonly Node[]): readonly Edit[] {
  const edits: Edit[] = [];
  let open: number | null = null;
  for (const node of nodes) {
    if (!('data' in node)) continue;
    const { start, end } = placeOf(node);
    if (node.data === 'other units') open ??= start;
    if (node.data === '/other units' && open !== null) {
      edits.push({ start: open, end, words: '' });
      open = null;
    }
  }
  return edits;
}

function links(elements: readonly Element[], origin: string | null): readonly Edit[] {
  return elements.flatMap((element) => {
    const path = element.tagName === 'a' ? attribute(element, 'href') : null;
    if (path === null || !path.startsWith('/')) return [];
    if (origin !== null)
      return [{ ...placeOfAttribute(element, 'href'), words: `href="${escapeXml(origin + path)}"` }];
    const { startTag, endTag } = placeOfTags(element);
    return [
      { ...startTag, words: '<span>' },
      { ...endTag, words: '</span>' },
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
    { start: end, end, words: `<style>${css}</style>` },
  ];
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
