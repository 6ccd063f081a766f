import { predictionEllipse } from '../../../src/stats/predictionEllipse.ts';
import { exampleWords, heads, scattered } from './heads.ts';
import type { Landing, LandingPanel } from '../../../src/charts/landings.ts';
import type { LandingInput } from '../../../src/charts/landingDrawing.ts';

type Place = readonly [side: number, carry: number];

/** Three heads, twelve invented shots each; the shots of the design's mock-up. */
const invented: readonly (readonly Place[])[] = [
  [
    [-2.9, 241],
    [13.7, 232.2],
    [-3.6, 239.7],
    [14.5, 233.6],
    [-18.9, 245.4],
    [15.3, 237],
    [11, 225.2],
    [-1.4, 240.6],
    [7.6, 233.1],
    [8.1, 241.4],
    [-18.2, 240.6],
    [25.6, 233.9],
  ],
  [
    [19.2, 233.6],
    [15.6, 228.6],
    [2.8, 234.3],
    [-6.2, 230.3],
    [0.5, 215.4],
    [10.7, 228.6],
    [21.7, 225.3],
    [-2, 226.5],
    [21.6, 232.6],
    [-10.1, 222.9],
    [10.3, 241.3],
    [-4.2, 215.9],
  ],
  [
    [-0.8, 211],
    [0.2, 223],
    [-5.4, 235.1],
    [20.3, 224.9],
    [-0.8, 220.5],
    [-9.1, 225.6],
    [-2.3, 225],
    [-11.3, 224.6],
    [9.5, 225.6],
    [-4.2, 229.3],
    [-7.7, 227],
    [10.4, 223.2],
  ],
];

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** A panel of shots, those at the places `leftOut` left out; a curve from ten counted shots up. */
export const landingPanelOf = (
  index: number,
  label: string,
  places: readonly Place[],
  leftOut: readonly number[] = [],
): LandingPanel => {
  const counted = places.filter((_, place) => !leftOut.includes(place));
  const average: Landing = {
    side: mean(counted.map(([side]) => side)),
    carry: mean(counted.map(([, carry]) => carry)),
  };
  const inside = counted.filter(([side]) => Math.abs(side) <= 15).length;
  const right = counted.filter(([side]) => side > 0).length;
  return {
    contender: { label, index },
    shots: places.map(([side, carry], place) => ({ side, carry, leftOut: leftOut.includes(place) })),
    numbers: `average ${average.carry.toFixed(0)} yards, ${Math.abs(average.side).toFixed(0)} ${average.side < 0 ? 'left' : 'right'}`,
    average,
    curve: counted.length < 10 ? null : predictionEllipse(counted, 0.9),
    feet: {
      left: `${counted.length - right} left`,
      within: `${inside} of ${counted.length} within 15`,
      right: `${right} right`,
    },
  };
};

export const landingInputOf = (
  panels: readonly LandingPanel[],
  rest: Partial<LandingInput> = {},
): LandingInput => ({
  ...exampleWords(
    'Carry and side of three driver heads',
    panels.map(({ contender }) => contender.label),
  ),
  panels,
  within: 15,
  axis: 'Yards, the golfer below: carry up the page, left and right of the target line across, one scale throughout.',
  key: {
    shot: 'one shot',
    ring: 'average place',
    curve: 'nine in ten further shots should land inside',
    others: 'the other two heads',
    bracket: 'within 15 yards of the line',
  },
  leftOut: 'Hollow, struck through: left out of the averages',
  recorded: panels.reduce((sum, { shots }) => sum + shots.length, 0),
  ...rest,
});

export const landingExample: LandingInput = landingInputOf(
  invented.map((places, index) => landingPanelOf(index, heads[index] ?? '', places, index === 2 ? [0] : [])),
);

/** As many panels with as many invented shots each. */
export const landingCrowd = (
  names: readonly string[],
  count: number,
  { side = 12, carry = 7 }: { readonly side?: number; readonly carry?: number } = {},
): LandingInput =>
  landingInputOf(
    names.map((name, index) => {
      const [across, along] = [scattered(count, 7), scattered(count, 11 + 2 * index)];
      const places = across.map((value, place): Place => [
        Math.round(10 * (side * value + 2 * index - 3)) / 10,
        Math.round(10 * (220 + 4 * index + carry * (along[place] ?? 0))) / 10,
      ]);
      return landingPanelOf(index, name, places, count > 5 ? [3] : []);
    }),
  );
