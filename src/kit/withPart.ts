import type { Element, ReadPage } from './htmlElements.ts';
import type { Place } from './htmlTags.ts';

/**
 * A page with part of another put into it; where each thing stands is known without reading it again.
 *
 * @param at offset in the page
 * @param taken place in the other page, whole elements
 * @param around what stands before and after the part
 */
export function withPart(
  page: ReadPage,
  at: number,
  other: ReadPage,
  taken: Place,
  around: readonly [before: string, after: string],
): ReadPage {
  const [before, after] = around;
  const part = `${before}${other.html.slice(taken.start, taken.end)}${after}`;
  const behind: Move = (start) => (start < at ? 0 : part.length);
  const into: Move = () => at + before.length - taken.start;
  const isTaken = ({ start }: Place): boolean => start >= taken.start && start < taken.end;
  const elements = [
    ...movedElements(page.elements, behind),
    ...movedElements(
      other.elements.filter(({ startTag }) => isTaken(startTag)),
      into,
    ),
  ];
  const comments = [
    ...page.comments.map((place) => moved(place, behind)),
    ...other.comments.filter(isTaken).map((place) => moved(place, into)),
  ];
  return {
    html: `${page.html.slice(0, at)}${part}${page.html.slice(at)}`,
    elements: elements.toSorted((x, y) => x.startTag.start - y.startTag.start),
    comments: comments.toSorted((x, y) => x.start - y.start),
  };
}

/** An element whose children may not have been copied. */
interface Copy extends Element {
  readonly children: Element[];
}

/** By how much something moves, by where it starts. */
type Move = (start: number) => number;

function moved<Placed extends Place>(placed: Placed, move: Move): Placed {
  const by = move(placed.start);
  return by === 0 ? placed : { ...placed, start: placed.start + by, end: placed.end + by };
}

function movedElements(elements: readonly Element[], move: Move): readonly Element[] {
  const copies = new Map<Element, Copy>();
  return elements.map((element) => {
    const parent = (element.parent === null ? undefined : copies.get(element.parent)) ?? null;
    const copy: Copy = {
      tagName: element.tagName,
      attributes: element.attributes.map((one) => moved(one, move)),
      parent,
      children: [],
      startTag: moved(element.startTag, move),
      endTag: element.endTag === null ? null : moved(element.endTag, move),
    };
    copies.set(element, copy);
    parent?.children.push(copy);
    return copy;
  });
}
