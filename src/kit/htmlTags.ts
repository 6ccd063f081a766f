import { decodeHTMLAttribute } from 'entities';
import { Tokenizer } from 'htmlparser2';

/** Where something stands in the text of a page, offsets. */
export interface Place {
  readonly start: number;
  readonly end: number;
}

/** With its name and its value. */
export interface Attribute extends Place {
  readonly name: string;
  /** As it is written, characters escaped. */
  readonly written: string;
}

interface Tag extends Place {
  readonly name: string;
}

export interface StartTag extends Tag {
  readonly attributes: readonly Attribute[];
  /** Whether the element has no end tag. */
  readonly alone: boolean;
}

interface PageListener {
  /** Whether the tags of elements with this name are told; all are where nothing is said. */
  readonly concerns?: (name: string) => boolean;
  readonly opened: (tag: StartTag) => void;
  readonly closed: (tag: Tag) => void;
  readonly text?: (start: number, end: number) => void;
  readonly comment?: (place: Place) => void;
}

const empty = new Set('area base br col embed hr img input link meta param source track wbr'.split(' '));
const nothing = (): void => {};

/** Tells what a page is made of, in its order, and where each stands. */
export function readTags(html: string, listener: PageListener): void {
  let name = '';
  let start = 0;
  let attributes: Attribute[] = [];
  let attribute = { start: 0, end: 0 };
  let written = '';
  let told = false;
  const concerns = listener.concerns ?? (() => true);
  // Inside drawings and formulas the rules of XML hold.
  let foreign = 0;
  const opened = (end: number, slash: boolean): void => {
    const alone = empty.has(name) || (slash && (foreign > 0 || isForeign(name)));
    if (isForeign(name) && !alone) foreign += 1;
    if (told) listener.opened({ name, start, end: end + 1, attributes, alone });
  };
  const tokenizer = new Tokenizer(
    { decodeEntities: false },
    {
      onopentagname: (from, to) => {
        name = html.slice(from, to).toLowerCase();
        start = from - 1;
        told = concerns(name);
        if (!told) return;
        attributes = [];
      },
      onattribname: (from, to) => {
        attribute = { start: from, end: to };
        written = '';
      },
      onattribdata: (from, to) => {
        if (told) written = html.slice(from, to);
      },
      onattribend: (_quote, end) => {
        if (!told) return;
        const { start: from, end: to } = attribute;
        attributes.push({ name: html.slice(from, to).toLowerCase(), start: from, end, written });
      },
      onopentagend: (end) => opened(end, false),
      onselfclosingtag: (end) => opened(end, true),
      onclosetag: (from, to) => {
        const closed = html.slice(from, to).toLowerCase();
        if (isForeign(closed)) foreign = Math.max(0, foreign - 1);
        if (concerns(closed))
          listener.closed({ name: closed, start: from - 2, end: html.indexOf('>', to) + 1 });
      },
      ontext: listener.text ?? nothing,
      oncomment: (from, end) => listener.comment?.({ start: html.lastIndexOf('<', from - 1), end: end + 1 }),
      isInForeignContext: () => foreign > 0,
      onattribentity: nothing,
      oncdata: nothing,
      ondeclaration: nothing,
      onend: nothing,
      onprocessinginstruction: nothing,
      ontextentity: nothing,
    },
  );
  tokenizer.write(html);
  tokenizer.end();
}

/** The value of an attribute as the browser reads it; null where there is none. */
export function valueIn(attributes: readonly Attribute[], name: string): string | null {
  const found = attributes.find((one) => one.name === name);
  if (found === undefined) return null;
  return found.written.includes('&') ? decodeHTMLAttribute(found.written) : found.written;
}

function isForeign(name: string): boolean {
  return name === 'svg' || name === 'math';
}
