import { parse, type DefaultTreeAdapterTypes } from 'parse5';

export type Node = DefaultTreeAdapterTypes.Node;
export type Element = DefaultTreeAdapterTypes.Element;

/** Where something stands in the text of a page, offsets. */
export interface Place {
  readonly start: number;
  readonly end: number;
}

/** Words that take the place of others. */
export interface Edit extends Place {
  readonly words: string;
}

/** All nodes of a page in their order, as the parser of HTML that browsers have reads it. */
export function nodesOf(page: string): readonly Node[] {
  const nodes: Node[] = [];
  const visit = (node: Node): void => {
    nodes.push(node);
    if ('childNodes' in node) for (const child of node.childNodes) visit(child);
  };
  visit(parse(page, { sourceCodeLocationInfo: true }));
  return nodes;
}

export function isElement(node: Node): node is Element {
  return 'tagName' in node;
}

export function attribute(element: Element, name: string): string | null {
  return element.attrs.find((one) => one.name === name)?.value ?? null;
}

/** The page with all edits made; one inside another goes with it, an insertion before what goes stays. */
export function applyEdits(page: string, edits: readonly Edit[]): string {
  const pieces: string[] = [];
  let at = 0;
  for (const { start, end, words } of edits.toSorted(outermostFirst)) {
    if (start < at) continue;
    pieces.push(page.slice(at, start), words);
    at = end;
  }
  return [...pieces, page.slice(at)].join('');
}

function outermostFirst(x: Edit, y: Edit): number {
  if (x.start !== y.start) return x.start - y.start;
  const inserts = ({ start, end }: Edit): boolean => start === end;
  return Number(inserts(y)) - Number(inserts(x)) || y.end - x.end;
}

/** @throws Error where the page leaves the element's tags out, and the parser has added them */
export function placeOf(node: Node): Place {
  return placed(node.sourceCodeLocation);
}

/** The place of an attribute with its name and value. */
export function placeOfAttribute(element: Element, name: string): Place {
  return placed(element.sourceCodeLocation?.attrs?.[name]);
}

export function placeOfTags(element: Element): { readonly startTag: Place; readonly endTag: Place } {
  const { startTag, endTag } = element.sourceCodeLocation ?? {};
  return { startTag: placed(startTag), endTag: placed(endTag) };
}

function placed(
  place: { readonly startOffset: number; readonly endOffset: number } | null | undefined,
): Place {
  if (place == null) throw new Error('The page leaves out what the parser had to add.');
  return { start: place.startOffset, end: place.endOffset };
}
