/** Grounds a chart can stand on. */
export type Ground = 'light' | 'dark';

/** Names of the custom properties in `src/styles/tokens.css`, which a test holds to these values. */
export type Token =
  | 'paper'
  | 'ink'
  | 'ink-2'
  | 'axis'
  | 'rule'
  | 'band'
  | 'hatch'
  | 'band-edge'
  | 'link'
  | 'visited'
  | ContenderColour;

/** Colours of the six contenders; on the dark ground the darker three stand in lighter tones of their hue. */
export type ContenderColour = 'umber' | 'bluebell' | 'pine' | 'rose' | 'heather' | 'lichen';

const both = (hex: string): Readonly<Record<Ground, string>> => ({ light: hex, dark: hex });

/** Every colour of the site, sRGB hex. */
export const palette: Readonly<Record<Token, Readonly<Record<Ground, string>>>> = {
  paper: { light: '#faf8f2', dark: '#16191d' },
  ink: { light: '#1d2125', dark: '#ece8df' },
  'ink-2': { light: '#4b5057', dark: '#b9b4a9' },
  axis: { light: '#7c776c', dark: '#86837b' },
  rule: { light: '#d9d3c5', dark: '#343a42' },
  band: { light: '#cac4b4', dark: '#394048' },
  hatch: { light: '#b3ab97', dark: '#565f6a' },
  'band-edge': { light: '#6c6557', dark: '#949ba5' },
  link: { light: '#22508a', dark: '#9dc2ec' },
  visited: { light: '#5e3a78', dark: '#cbb2e0' },
  umber: { light: '#905d0b', dark: '#ecbf78' },
  bluebell: both('#488edf'),
  pine: { light: '#047764', dark: '#93d0ba' },
  rose: both('#bd768e'),
  heather: { light: '#696295', dark: '#cac0f2' },
  lichen: both('#8e8f58'),
};

/** Every colour by the name of its custom property. */
const byName: ReadonlyMap<string, Readonly<Record<Ground, string>>> = new Map(Object.entries(palette));

/** Attribute value that follows the page's theme. */
export const paint = (token: Token): string => `var(--${token})`;

/**
 * An SVG whose colours no longer follow a page: every `var(--name)` becomes the value it has on `ground`.
 * Throws for a name that is not in the palette.
 */
export const literalColours = (svg: string, ground: Ground): string =>
  svg.replaceAll(/var\(--([a-z0-9-]+)\)/g, (_, name: string) => {
    const colour = byName.get(name);
    if (colour === undefined) throw new Error(`The palette has no colour "${name}".`);
    return colour[ground];
  });
