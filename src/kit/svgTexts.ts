/** Where something of a drawing stands: from its top left corner, and how many times it is enlarged. */
interface Place {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}

/** What a text inherits of the groups around it. */
interface Inherited {
  readonly serif: boolean;
  readonly size: number;
  readonly weight: 400 | 600;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly fill: string;
  /** Width of the line round its letters; null where they have none. */
  readonly strokeWidth: number | null;
  /** Null where it is moved otherwise than by steps and enlarging, or does not stand there whole and opaque. */
  readonly place: Place | null;
}

/** A text of a drawing. */
export interface SvgText extends Inherited {
  /** The attributes of its own tag as they stand: ` x="24" y="35"`. */
  readonly own: string;
  /** Its words, `&` for `&amp;`. */
  readonly words: string;
  /** From the corner that the `transform` of its own tag leads to. */
  readonly x: number;
  readonly y: number;
}

const root: Inherited = {
  serif: false,
  size: 14,
  weight: 400,
  anchor: 'start',
  fill: '#000000',
  strokeWidth: null,
  place: { x: 0, y: 0, scale: 1 },
};

/**
 * A drawing of ours with each of its texts replaced; one holds words alone, and no attribute a plain `>`.
 *
 * @param write what stands there instead; the text itself where it is to stay
 */
export function replaceTexts(svg: string, write: (text: SvgText, whole: string) => string): string {
  const open: Inherited[] = [root];
  return svg.replaceAll(
    /<text([^>]*)>([^<]*)<\/text>|<(\/?)(g|svg)\b([^>]*)>/g,
    (whole: string, own: string | undefined, words: string, end: string, tag: string, attributes: string) => {
      const around = open.at(-1) ?? root;
      if (own !== undefined) {
        const [x = 0, y = 0] = ['x', 'y'].map((name) => Number(attributeOf(own, name) ?? 0));
        return write({ ...inherited(around, own), own, words: plainWords(words), x, y }, whole);
      }
      if (end === '/') open.pop();
      else if (!attributes.endsWith('/')) {
        const own = inherited(around, attributes);
        const plain = tag === 'g' || (open.length === 1 && fillsItsView(attributes));
        open.push(plain ? own : { ...own, place: null });
      }
      return whole;
    },
  );
}

function inherited(around: Inherited, attributes: string): Inherited {
  const read = (name: string): string | undefined => attributeOf(attributes, name);
  const [family, size, weight, anchor] = [
    read('font-family'),
    read('font-size'),
    read('font-weight'),
    read('text-anchor'),
  ];
  return {
    serif: family === undefined ? around.serif : family.startsWith('Literata'),
    size: size === undefined ? around.size : Number(size),
    weight: weight === undefined ? around.weight : weight === '600' ? 600 : 400,
    anchor: anchor === 'middle' || anchor === 'end' || anchor === 'start' ? anchor : around.anchor,
    fill: read('fill') ?? around.fill,
    strokeWidth: strokeOf(read('stroke'), read('stroke-width'), around.strokeWidth),
    place: veiled.test(attributes) ? null : moved(around.place, read('transform')),
  };
}

function strokeOf(
  stroke: string | undefined,
  width: string | undefined,
  around: number | null,
): number | null {
  if (stroke === undefined) return around;
  return stroke === 'none' ? null : Number(width ?? 1);
}

const veiled = /\s(?:opacity|fill-opacity|clip-path|mask|filter)="/;

/** Whether the px of a drawing are those of its width and height. */
function fillsItsView(attributes: string): boolean {
  const [view, width, height] = ['viewBox', 'width', 'height'].map((name) => attributeOf(attributes, name));
  return view === undefined || view === `0 0 ${width} ${height}`;
}

const steps = /^(?:translate\((-?[\d.]+)[ ,](-?[\d.]+)\))? ?(?:scale\(([\d.]+)\))?$/;

function moved(place: Place | null, transform: string | undefined): Place | null {
  if (transform === undefined || place === null) return place;
  const read = steps.exec(transform);
  if (read === null) return null;
  const [, x = 0, y = 0, scale = 1] = read.map((value) => (value === undefined ? undefined : Number(value)));
  return {
    x: place.x + place.scale * x,
    y: place.y + place.scale * y,
    scale: place.scale * scale,
  };
}

function attributeOf(attributes: string, name: string): string | undefined {
  return new RegExp(`\\s${name}="([^"]*)"`).exec(attributes)?.[1];
}

function plainWords(words: string): string {
  if (!words.includes('&')) return words;
  return words
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&');
}
