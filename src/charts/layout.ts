import type { Weight } from './textWidth.ts';

interface TextStyle {
  readonly size: number;
  readonly weight: Weight;
  readonly colour: 'ink' | 'ink-2';
}

/** Sizes in px that differ between the two variants of a chart. */
export interface Layout {
  readonly variant: Variant;
  readonly width: number;
  /** Longest line of words, px, with room to spare: in a wider fallback font it still ends before the edge of the picture. */
  readonly textRoom: number;
  readonly sentence: TextStyle;
  readonly numbers: TextStyle;
  readonly name: TextStyle;
  readonly estimate: TextStyle;
  readonly small: TextStyle;
  /** From the rule above a row to the baseline of its first line. */
  readonly firstBaseline: number;
  /** Radius of the mark beside a contender's name. */
  readonly markRadius: number;
  /** From the edge to the centre of that mark, and to the name. */
  readonly markInset: number;
  readonly nameInset: number;
}

export type Variant = 'wide' | 'narrow';

const style = (size: number, weight: Weight, colour: 'ink' | 'ink-2'): TextStyle => ({
  size,
  weight,
  colour,
});

const shared = {
  sentence: style(16, 600, 'ink'),
  estimate: style(15, 600, 'ink'),
};

/** Narrow is drawn at the width a 320 px screen leaves, so that its text is never scaled down. */
export const layouts: Readonly<Record<Variant, Layout>> = {
  wide: {
    ...shared,
    variant: 'wide',
    width: 720,
    textRoom: 670,
    // Shown down to 660 px, where this is 13.75.
    small: style(15, 400, 'ink-2'),
    numbers: style(15, 400, 'ink-2'),
    name: style(15, 600, 'ink'),
    firstBaseline: 24,
    markRadius: 5.8,
    markInset: 7,
    nameInset: 21,
  },
  narrow: {
    ...shared,
    variant: 'narrow',
    width: 288,
    textRoom: 268,
    small: style(14, 400, 'ink-2'),
    numbers: style(14.5, 400, 'ink-2'),
    name: style(14.5, 600, 'ink'),
    firstBaseline: 22,
    markRadius: 5.2,
    markInset: 6,
    nameInset: 18,
  },
};
