import rates from '../../tests/bench/errorRates.json' with { type: 'json' };
import type { Table } from './figure.ts';

const percent = (value: number): string => value.toFixed(1);
const worst = (values: readonly number[]): string =>
  values.length === 0 ? '–' : percent(Math.max(...values));
const least = (values: readonly number[]): string =>
  values.length === 0 ? '–' : percent(Math.min(...values));
const byNumber = (x: number, y: number): number => x - y;

/** How the figures below were found. */
export const errorRateSource =
  `Our own simulation: ${rates.trials.toLocaleString('en-GB')} made-up sessions a line (fewer for the order of ` +
  `shots), carry spread ${rates.carrySd} yards, a gap of ${rates.matters} yards matters. Run again with ` +
  `node tests/bench/errorRates.ts.`;

/** False gaps between equal contenders, one golfer: the worst over two to six contenders. */
export function falseGapTable(): Table {
  const shots = [...new Set(rates.oneHitter.map(({ shots: own }) => Math.min(...own)))].sort(byNumber);
  const kinds = [...new Set(rates.oneHitter.map(({ spreads, strikes }) => `${spreads} spreads, ${strikes}`))];
  return {
    caption:
      'One golfer, equal contenders: sessions in 100 with any false gap, the worst of two to six contenders',
    head: ['Shots each (fewest)', ...kinds, 'Intervals that hold the truth, at least'],
    rows: shots.map((count) => {
      const own = rates.oneHitter.filter(({ shots: each }) => Math.min(...each) === count);
      return [
        String(count),
        ...kinds.map((kind) =>
          worst(
            own.flatMap(({ spreads, strikes, falseGaps }) =>
              `${spreads} spreads, ${strikes}` === kind ? [falseGaps] : [],
            ),
          ),
        ),
        least(own.map(({ coverage }) => coverage)),
      ];
    }),
  };
}

/** The planner's promise beside what was found. */
export function powerTable(): Table {
  return {
    caption: 'Chance to find a true gap, in 100 sessions: as the planner says, and as found',
    head: ['Contenders', 'Shots each', 'Planned', 'Found'],
    rows: rates.power.map(({ contenders, shots, promised, found }) => [
      String(contenders),
      String(shots),
      percent(promised),
      percent(found),
    ]),
  };
}

/** False gaps with eight golfers. */
export function eightHittersTable(): Table {
  return {
    caption: 'Eight golfers, equal contenders on average: sessions in 100 with any false gap',
    head: [
      'Contenders',
      'How golfers differ in what suits them (sd, yards)',
      'False gaps',
      'Intervals that hold the truth',
    ],
    rows: rates.eightHitters.map(({ contenders, interaction, falseGaps, coverage }) => [
      String(contenders),
      interaction.sd === 0 ? 'not at all' : `${interaction.sd}, ${interaction.of}`,
      percent(falseGaps),
      percent(coverage),
    ]),
  };
}
