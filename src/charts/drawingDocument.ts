export const svgNamespace = 'http://www.w3.org/2000/svg';

/** What an attribute was set to: numbers stay numbers, so that whoever writes them need not read them again. */
export type AttributeValue = string | number;

/**
 * An SVG element that Plot draws with. It has as much of a browser's element as Plot and d3-selection ask for when they draw the
 * marks of our charts; whatever else is asked of it throws.
 */
export class DrawingElement {
  readonly ownerDocument: DrawingDocument;
  readonly localName: string;
  /** In the order in which they were first set. */
  readonly attributes = new Map<string, AttributeValue>();
  readonly children: DrawingElement[] = [];
  /** Words at the start of the element, before its children. */
  words = '';
  /** Where d3-selection keeps what an element stands for. */
  __data__: unknown = undefined;
  private placed = false;

  constructor(ownerDocument: DrawingDocument, localName: string) {
    this.ownerDocument = ownerDocument;
    this.localName = localName;
  }

  get namespaceURI(): string {
    return svgNamespace;
  }

  setAttribute(name: string, value: unknown): void {
    this.attributes.set(name, typeof value === 'number' ? value : String(value));
  }

  getAttribute(name: string): string | null {
    const value = this.attributes.get(name);
    return value === undefined ? null : String(value);
  }

  removeAttribute(name: string): void {
    this.attributes.delete(name);
  }

  /** Throws for an element that already has its place: none is moved. */
  appendChild(child: DrawingElement): DrawingElement {
    if (child.placed) throw new Error(`<${child.localName}> is in the drawing already and cannot be moved.`);
    child.placed = true;
    this.children.push(child);
    return child;
  }

  /** Puts `child` last; throws where it would have to stand before another. */
  insertBefore(child: DrawingElement, next: null): DrawingElement {
    // Callers are not typed.
    if ((next as unknown) !== null)
      throw new Error(`<${child.localName}> can only be put at the end of <${this.localName}>.`);
    return this.appendChild(child);
  }

  get textContent(): string {
    return this.words + this.children.map(({ textContent }) => textContent).join('');
  }

  set textContent(value: unknown) {
    this.children.length = 0;
    this.words = String(value ?? '');
  }

  /** Plot leaves its scales with what it drew; nothing asks for them. */
  set scale(_: unknown) {}

  /** And its legends. */
  set legend(_: unknown) {}
}

/** Makes elements, each for one drawing; it keeps none of them, so that one document serves all. */
export class DrawingDocument {
  /** Plot asks it for the first element of a drawing. */
  readonly documentElement: DrawingElement = new DrawingElement(this, 'svg');

  /** Throws for anything but SVG. */
  createElementNS(namespace: string, name: string): DrawingElement {
    if (namespace !== svgNamespace)
      throw new Error(`A chart is drawn in SVG alone; <${name}> is of "${namespace}".`);
    return new DrawingElement(this, name);
  }
}

/** Ends the chain of prototypes, so that a property which is not supported fails aloud. */
const refusing = (what: string): object => {
  const refuse = (done: string, property: string): never => {
    throw new Error(
      `Plot ${done} "${property}" of ${what}, which src/charts/drawingDocument.ts does not have. Add it there, or draw without it.`,
    );
  };
  return new Proxy(Object.prototype, {
    get: (target, property, receiver): unknown =>
      typeof property === 'symbol' || property in target
        ? Reflect.get(target, property, receiver)
        : refuse('asked for', property),
    set: (_, property): never => refuse('set', String(property)),
  });
};

Object.setPrototypeOf(DrawingElement.prototype, refusing('an element'));
Object.setPrototypeOf(DrawingDocument.prototype, refusing('the document'));
