import { endTagOf, placeOf, type Element, type ReadPage } from './htmlElements.ts';
import type { Place } from './htmlTags.ts';

/** An element of a page, with what is to stand before and after it on another. */
interface Part {
  readonly of: ReadPage;
  readonly element: Element;
  readonly before: string;
  readonly after: string;
}

/**
 * A page with an element of another put at the end of one of its own; where each thing stands is known without reading it
 * again.
 *
 * @throws Error where a page leaves out the end of either
 */
export function withPart(
  page: ReadPage,
  host: Element,
  { of: other, element, before, after }: Part,
): ReadPage {
  const at = endTagOf(host).start;
  const taken = placeOf(element);
  const part = `${before}${other.html.slice(taken.start, taken.end)}${after}`;
  const behind: Move = (start) => (start < at ? 0 : part.length);
  const into: Move = () => at + before.length - taken.start;
  const isTaken = ({ start }: Place): boolean => start >= taken.start && start < taken.end;
  const copies: Copies = new Map();
  copyInto(copies, page.elements, behind, null);
  copyInto(
    copies,
    other.elements.filter(({ startTag }) => isTaken(startTag)),
    into,
    host,
  );
  const comments = [
    ...page.comments.map((place) => moved(place, behind)),
    ...other.comments.filter(isTaken).map((place) => moved(place, into)),
  ];
  return {
    html: `${page.html.slice(0, at)}${part}${page.html.slice(at)}`,
    elements: [...copies.values()].sort((x, y) => x.startTag.start - y.startTag.start),
    comments: comments.toSorted((x, y) => x.start - y.start),
  };
}

/** An element whose children may not have been copied. */
interface Copy extends Element {
  readonly children: Element[];
}

type Copies = Map<Element, Copy>;

/** By how much something moves, by where it starts. */
type Move = (start: number) => number;

function moved<Placed extends Place>(placed: Placed, move: Move): Placed {
  const by = move(placed.start);
  return by === 0 ? placed : { ...placed, start: placed.start + by, end: placed.end + by };
}

/** @param host of those whose parent is not copied */
function copyInto(copies: Copies, elements: readonly Element[], move: Move, host: Element | null): void {
  for (const element of elements) {
    const original = element.parent !== null && copies.has(element.parent) ? element.parent : host;
    const parent = (original === null ? undefined : copies.get(original)) ?? null;
    const copy: Copy = {
      tagName: element.tagName,
      attributes: element.attributes.map((one) => moved(one, move)),
      parent,
      children: [],
      startTag: moved(element.startTag, move),
      endTag: movedEnd(element, move),
    };
    copies.set(element, copy);
    parent?.children.push(copy);
  }
}

/** An end of no length goes with its start, also where it touches the place at which others begin to move. */
function movedEnd({ startTag, endTag }: Element, move: Move): Place | null {
  if (endTag === null) return null;
  return moved(endTag, endTag.start === endTag.end ? () => move(startTag.start) : move);
}
