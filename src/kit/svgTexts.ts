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
        const read = attributesOf(own);
        const [x, y] = [Number(read.get('x') ?? 0), Number(read.get('y') ?? 0)];
        return write({ ...inherited(around, read), own, words: plainWords(words), x, y }, whole);
      }
      if (end === '/') open.pop();
      else if (!attributes.endsWith('/')) {
        const read = attributesOf(attributes);
        const own = inherited(around, read);
        const plain = tag === 'g' || (open.length === 1 && fillsItsView(read));
        open.push(plain ? own : { ...own, place: null });
      }
      return whole;
    },
  );
}

type Attributes = ReadonlyMap<string, string>;

/** All of them at once: a drawing has hundreds of tags, and a search for each name would cost more than to draw it. */
function attributesOf(told: string): Attributes {
  const read = new Map<string, string>();
  let end = 0;
  for (;;) {
    const equals = told.indexOf('="', end);
    if (equals < 0) return read;
    const close = told.indexOf('"', equals + 2);
    if (close < 0) return read;
    const name = told.slice(end, equals).trim();
    if (!read.has(name)) read.set(name, told.slice(equals + 2, close));
    end = close + 1;
  }
}

function inherited(around: Inherited, read: Attributes): Inherited {
  if (read.size === 0) return around;
  const family = read.get('font-family');
  const size = read.get('font-size');
  const weight = read.get('font-weight');
  const anchor = read.get('text-anchor');
  return {
    serif: family === undefined ? around.serif : family.startsWith('Literata'),
    size: size === undefined ? around.size : Number(size),
    weight: weight === undefined ? around.weight : weight === '600' ? 600 : 400,
    anchor: anchor === 'middle' || anchor === 'end' || anchor === 'start' ? anchor : around.anchor,
    fill: read.get('fill') ?? around.fill,
    strokeWidth: strokeOf(read.get('stroke'), read.get('stroke-width'), around.strokeWidth),
    place: veils.some((name) => read.has(name)) ? null : moved(around.place, read.get('transform')),
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

const veils = ['opacity', 'fill-opacity', 'clip-path', 'mask', 'filter'] as const;

/** Whether the px of a drawing are those of its width and height. */
function fillsItsView(read: Attributes): boolean {
  const view = read.get('viewBox');
  return view === undefined || view === `0 0 ${read.get('width')} ${read.get('height')}`;
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

function plainWords(words: string): string {
  if (!words.includes('&')) return words;
  return words
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&');
}
