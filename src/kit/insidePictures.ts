import { escapeXml } from '../prose/escapeXml.ts';
import { attribute, placeOf, placeOfAttribute, type Edit, type Element } from './htmlEdits.ts';

export interface Picture {
  readonly inside: Edit;
  readonly inWords: Edit;
  /** Bytes. */
  readonly size: number;
}

/** A picture as part of the file, or as the words that stand for it where there is no such file. */
export function pictureIn(img: Element, bytesOf: (address: string) => Uint8Array | null): Picture {
  const address = attribute(img, 'src') ?? '';
  const bytes = bytesOf(address);
  const inWords = { ...placeOf(img), words: `<span>${escapeXml(attribute(img, 'alt') ?? '')}</span>` };
  if (bytes === null) return { inside: inWords, inWords, size: 0 };
  const data = `src="${dataAddress(address, bytes)}"`;
  return { inside: { ...placeOfAttribute(img, 'src'), words: data }, inWords, size: bytes.length };
}

/** The bytes of a picture as an address of their own. */
export function dataAddress(address: string, bytes: Uint8Array): string {
  const ending = /\.(\w+)$/.exec(address)?.[1]?.toLowerCase() ?? 'webp';
  const type = ending === 'svg' ? 'svg+xml' : ending === 'jpg' ? 'jpeg' : ending;
  return `data:image/${type};base64,${Buffer.from(bytes).toString('base64')}`;
}
