import { Resvg } from '@resvg/resvg-js';
import { palette, type Ground } from '../../charts/palette.ts';
import { makeProblem } from '../../problems/makeProblem.ts';
import type { Place, Problem } from '../../problems/problem.ts';
import type { Logo } from './brand.ts';
import { contrast } from './contrast.ts';

/** Least contrast of a picture's parts with their ground (WCAG 2.2, 1.4.11). */
const leastContrast = 3;

/** Least share of what is drawn that has it, and of its whole place. */
const leastShare = { ofDrawn: 0.6, ofPlace: 0.02 } as const;

/** A logo that covers more of its place brings a ground of its own, which need not stand out. */
const ownGround = 0.6;

/** Whether a logo can be seen on a ground; a warning where not. */
export function logoSeenProblems(logo: Logo, ground: Ground, place: Place): readonly Problem[] {
  const { drawn, seen } = sharesOf(logo, palette.paper[ground]);
  const letsThrough = drawn < ownGround;
  if (seen >= leastShare.ofPlace && !(letsThrough && seen < leastShare.ofDrawn * drawn)) return [];
  return [
    makeProblem('logo-hard-to-see', place, {
      expected: `a logo that stands out ${leastContrast}:1 from the ${ground} ground ${palette.paper[ground]}`,
      found: `${Math.round((100 * seen) / Math.max(drawn, seen))}% of what is drawn does`,
      cure:
        ground === 'dark'
          ? 'Name a lighter one under logo_dark.'
          : 'Use a darker one, or one with a ground of its own.',
    }),
  ];
}

/** Shares of the logo's place that are drawn on at all, and that stand out from `paper`. */
function sharesOf(logo: Logo, paper: string): { readonly drawn: number; readonly seen: number } {
  const svg = standingAlone(logo);
  const alone = new Resvg(svg).render().pixels;
  const onPaper = new Resvg(svg, { background: paper }).render().pixels;
  const known = new Map<string, boolean>();
  let [drawn, seen] = [0, 0];
  for (let at = 0; at < onPaper.length; at += 4) {
    if ((alone[at + 3] ?? 0) > 127) drawn += 1;
    const colour = `#${onPaper.subarray(at, at + 3).toString('hex')}`;
    let standsOut = known.get(colour);
    if (standsOut === undefined) known.set(colour, (standsOut = contrast(colour, paper) >= leastContrast));
    if (standsOut) seen += 1;
  }
  return { drawn: (4 * drawn) / onPaper.length, seen: (4 * seen) / onPaper.length };
}

/** A drawing that shows the logo at its size on pages. */
function standingAlone({ width, height, content }: Logo): string {
  const bytes = content.kind === 'svg' ? Buffer.from(content.svg) : Buffer.from(content.bytes);
  const type = content.kind === 'svg' ? 'svg+xml' : 'png';
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">` +
    `<image width="${width}" height="${height}" href="data:image/${type};base64,${bytes.toString('base64')}"/></svg>`
  );
}
