import { greatestOf, leastOf } from '../stats/extremes.ts';
import type { Landing, LandingPanel } from './landings.ts';
import type { Layout, Variant } from './layout.ts';
import type { Spot } from './signs.ts';
import { steadyPlace } from './steadyPlace.ts';
import { stepOver, stepsBetween, tickText } from './steps.ts';
import { textWidth } from './textWidth.ts';

/** One scale for all panels, as long up the page as across. */
export interface LandingScale {
  readonly columns: number;
  /** Left edges of the panels of a row, px, and the width of one. */
  readonly lefts: readonly number[];
  readonly panelWidth: number;
  readonly plotHeight: number;
  /** How long one unit is, px, up the page and across. */
  readonly perUnit: number;
  /** Place in a panel, px from the left end of its foot, y down. */
  readonly place: (landing: Landing) => Spot;
  /** Numbered rules, px from the foot of the panel. */
  readonly ticks: readonly { readonly y: number; readonly text: string }[];
}

const columnGap = 20;
/** Room round the outermost marks, px. */
const margin = 8;
const tallest: Readonly<Record<Variant, number>> = { wide: 300, narrow: 190 };
const lowest = 70;
/** Least room between two numbers of the scale, px. */
const lineHeight = 19;

/** Rows of three; four make two rows of two. */
const columnsOf = (panels: number): number => (panels === 4 ? 2 : Math.min(3, panels));

/** Centre of a curve, and how far it reaches across and along from there. */
const reachOf = ({ curve }: LandingPanel): readonly Landing[] => {
  if (curve === null) return [];
  const [major, minor] = curve.halfAxes;
  const [side, carry] = curve.centre;
  const [cosine, sine] = [Math.cos(curve.angle), Math.sin(curve.angle)];
  const across = Math.hypot(major * cosine, minor * sine);
  const along = Math.hypot(major * sine, minor * cosine);
  return [
    { side: side - across, carry: carry - along },
    { side: side + across, carry: carry + along },
  ];
};

/** The scale that holds every shot, average and curve; the target line runs up the middle of each panel. */
export const landingScale = (
  { panels, within }: { readonly panels: readonly LandingPanel[]; readonly within: number },
  layout: Layout,
): LandingScale => {
  const places = panels.flatMap((panel) => [
    ...panel.shots,
    ...(panel.average === null ? [] : [panel.average]),
    ...reachOf(panel),
  ]);
  const half = Math.max(within * 1.1, greatestOf(places.map(({ side }) => Math.abs(side))));
  const [nearest, farthest] = [
    leastOf(places.map(({ carry }) => carry)),
    greatestOf(places.map(({ carry }) => carry)),
  ];
  const { small, width } = layout;
  const numberWidth = Math.max(
    ...[nearest, farthest].map((carry) => textWidth(tickText(carry, 1), small.size, small.weight)),
  );
  const columns = layout.variant === 'wide' ? columnsOf(panels.length) : 1;
  const start = Math.ceil(numberWidth) + 6;
  const panelWidth = (width - start - (columns - 1) * columnGap) / columns;
  const span = farthest - nearest;
  const perUnit = Math.min(
    (panelWidth - 2 * margin) / (2 * half),
    ...(span > 0 ? [(tallest[layout.variant] - 2 * margin) / span] : []),
  );
  const plotHeight = Math.max(lowest, span * perUnit + 2 * margin);
  const middle = (nearest + farthest) / 2;
  const place = ({ side, carry }: Landing): Spot => ({
    x: steadyPlace(panelWidth / 2 + side * perUnit),
    y: steadyPlace(-plotHeight / 2 - (carry - middle) * perUnit),
  });

  const shown = plotHeight / perUnit;
  const most = Math.max(2, Math.min(5, Math.floor(plotHeight / lineHeight) - 1));
  const step = stepOver(shown, most);
  const ticks = stepsBetween(middle - shown / 2, middle + shown / 2, step)
    .map((carry) => ({ y: place({ side: 0, carry }).y, text: tickText(carry, step) }))
    .filter(({ y }) => y < -lineHeight / 2);
  return {
    columns,
    lefts: Array.from({ length: columns }, (_, column) => start + column * (panelWidth + columnGap)),
    panelWidth,
    plotHeight,
    perUnit,
    place,
    ticks,
  };
};
