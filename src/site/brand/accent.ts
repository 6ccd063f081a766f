import type { BrandAnswers } from '../../intake/authored/brand.ts';
import type { PlaceOf } from '../../intake/authored/places.ts';
import { palette, type Ground } from '../../charts/palette.ts';
import { makeProblem } from '../../problems/makeProblem.ts';
import type { Problem } from '../../problems/problem.ts';
import { contrast } from './contrast.ts';
import { nearestAccent } from './nearestAccent.ts';

/** Least contrast of text with its ground (WCAG 2.2, 1.4.3); the outline of what has the focus, in the same colour, needs 3 (1.4.11). */
const leastContrast = 4.5;

export type Accent = NonNullable<BrandAnswers['accent']>;

const grounds: readonly Ground[] = ['light', 'dark'];

/** What is wrong with the colours of links, each with the nearest that would do. */
export function accentProblems(accent: Accent, placeOf: PlaceOf): readonly Problem[] {
  return grounds.flatMap((ground) => {
    const colour = accent[ground];
    const paper = palette.paper[ground];
    const found = colour === undefined ? leastContrast : contrast(colour, paper);
    if (colour === undefined || found >= leastContrast) return [];
    // Rounded down, so that what fails never reads as if it had passed.
    const ratio = (Math.floor(found * 10) / 10).toFixed(1);
    return [
      makeProblem('accent-too-faint', placeOf(['brand', 'accent', ground]), {
        expected: `a colour with a contrast of ${leastContrast}:1 or more with the ${ground} ground ${paper}, so that links can be read`,
        found: `${colour}, ${ratio}:1`,
        cure: `Write ${nearestAccent(colour, paper, leastContrast).slice(1)}, the nearest colour of the same hue that will do.`,
      }),
    ];
  });
}

/** A style sheet that puts the accent in the place of the links' own colour; charts, print and forced colours keep theirs. */
export function accentCss({ light, dark }: Accent): string {
  const rule = (media: string, colour: string | undefined): string =>
    colour === undefined ? '' : `@media ${media} {\n  html:root {\n    --link: ${colour};\n  }\n}\n`;
  const seen = '(forced-colors: none)';
  return (
    rule(`screen and ${seen} and (prefers-color-scheme: light)`, light) +
    rule(`screen and ${seen} and (prefers-color-scheme: dark)`, dark) +
    rule('print', light)
  );
}
