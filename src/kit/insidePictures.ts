import { escapeXml } from '../prose/escapeXml.ts';
import type { Edit } from './htmlEdits.ts';
import { attribute, placeOf, placeOfAttribute, type Element } from './htmlElements.ts';

export interface Picture {
  readonly inside: Edit;
  readonly inWords: Edit;
  /** Bytes. */
  readonly size: number;
}

/** No wider edition of a picture is put into a file, pixels. */
const widest = 960;

/** A picture as part of the file, or as the words that stand for it where there is no such file. */
export function pictureIn(img: Element, bytesOf: (address: string) => Uint8Array | null): Picture {
  const picture = pictureAround(img);
  const inWords = {
    ...placeOf(picture ?? img),
    words: `<span>${escapeXml(attribute(img, 'alt') ?? '')}</span>`,
  };
  for (const address of [...editionsIn(picture), attribute(img, 'src') ?? '']) {
    const bytes = bytesOf(address);
    if (bytes === null) continue;
    const words = `src="${dataAddress(address, bytes)}"`;
    return { inside: { ...placeOfAttribute(img, 'src'), words }, inWords, size: bytes.length };
  }
  return { inside: inWords, inWords, size: 0 };
}

/**
 * The other sources of pictures: one for the dark theme goes into the file as well, and of editions in several widths
 * only the one that `pictureIn` has taken.
 */
export function sourceIn(source: Element, bytesOf: (address: string) => Uint8Array | null): Edit {
  const forTheme = attribute(source, 'media') !== null;
  const address = attribute(source, 'srcset') ?? '';
  const bytes = forTheme ? bytesOf(address) : null;
  return bytes === null
    ? { ...placeOf(source), words: '' }
    : { ...placeOfAttribute(source, 'srcset'), words: `srcset="${dataAddress(address, bytes)}"` };
}

function pictureAround({ parent }: Element): Element | null {
  return parent?.tagName === 'picture' ? parent : null;
}

/** The widest edition that a file may hold, of those that a picture offers in several widths. */
function editionsIn(picture: Element | null): readonly string[] {
  const offered = (picture?.children ?? [])
    .filter((source) => source.tagName === 'source' && attribute(source, 'media') === null)
    .flatMap((source) => (attribute(source, 'srcset') ?? '').split(','))
    .flatMap((candidate) => {
      const [, address, width] = /^\s*(\S+)\s+(\d+)w\s*$/.exec(candidate) ?? [];
      return address === undefined ? [] : [{ address, width: Number(width) }];
    })
    .filter(({ width }) => width <= widest)
    .toSorted((x, y) => y.width - x.width);
  return offered.slice(0, 1).map(({ address }) => address);
}

/** The bytes of a picture as an address of their own. */
function dataAddress(address: string, bytes: Uint8Array): string {
  const ending = /\.(\w+)$/.exec(address)?.[1]?.toLowerCase() ?? 'webp';
  const type = ending === 'svg' ? 'svg+xml' : ending === 'jpg' ? 'jpeg' : ending;
  return `data:image/${type};base64,${Buffer.from(bytes).toString('base64')}`;
}
