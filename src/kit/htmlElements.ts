import { readTags, valueIn, type Attribute, type Place } from './htmlTags.ts';

export interface Element {
  readonly tagName: string;
  readonly attributes: readonly Attribute[];
  readonly parent: Element | null;
  readonly children: readonly Element[];
  readonly startTag: Place;
  /** Of no length after an element that needs none; null where the page leaves it out. */
  readonly endTag: Place | null;
}

/** A page, elements and comments in it, in their order. */
export interface ReadPage {
  readonly html: string;
  readonly elements: readonly Element[];
  readonly comments: readonly Place[];
}

/** An element whose children, and whose end, may not have been met. */
interface OpenElement extends Element {
  readonly parent: OpenElement | null;
  readonly children: OpenElement[];
  endTag: Place | null;
}

/**
 * Elements and comments of a page as they are written: nothing is added that the page leaves out.
 *
 * @param names of the elements that are asked for; others are passed over, as if what is in them stood in their place
 */
export function readPage(html: string, names: ReadonlySet<string>): ReadPage {
  const elements: OpenElement[] = [];
  const comments: Place[] = [];
  let open: OpenElement | null = null;
  readTags(html, {
    concerns: (name) => names.has(name),
    opened: ({ name: tagName, attributes, alone, start, end }) => {
      const endTag = alone ? { start: end, end } : null;
      const element: OpenElement = {
        tagName,
        attributes,
        parent: open,
        children: [],
        startTag: { start, end },
        endTag,
      };
      elements.push(element);
      open?.children.push(element);
      if (!alone) open = element;
    },
    closed: ({ name, start, end }) => {
      let element = open;
      while (element !== null && element.tagName !== name) element = element.parent;
      // The end of nothing that is open says nothing.
      if (element === null) return;
      element.endTag = { start, end };
      open = element.parent;
    },
    comment: (place) => comments.push(place),
  });
  return { html, elements, comments };
}

/** The value of an attribute as a browser reads it; null where there is none. */
export function attribute(element: Element, name: string): string | null {
  return valueIn(element.attributes, name);
}

/** @throws Error where the page leaves out where the element ends */
export function placeOf(element: Element): Place {
  return { start: element.startTag.start, end: endTagOf(element).end };
}

/** @throws Error where the page leaves it out */
export function endTagOf({ endTag, tagName }: Element): Place {
  if (endTag === null) throw new Error(`The page leaves out the end of an element: ${tagName}.`);
  return endTag;
}

/**
 * The place of an attribute with its name and value.
 *
 * @throws Error where there is none
 */
export function placeOfAttribute(element: Element, name: string): Place {
  const found = element.attributes.find((one) => one.name === name);
  if (found === undefined) throw new Error(`An element has no ${name}: ${element.tagName}.`);
  const { start, end } = found;
  return { start, end };
}
