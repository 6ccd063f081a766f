import rates from './errorRates.json' with { type: 'json' };
import { printStated } from '../prose/numbers.ts';
import { mattersWords } from '../prose/english/ranges.ts';
import { toReader, unitFor, unitWord, type UnitSystem } from '../prose/readerUnits.ts';
import { toCanonical } from '../trade/units.ts';
import type { Table } from './table.ts';

export const percent = (value: number): string => value.toFixed(1);
const worst = (values: readonly number[]): string =>
  values.length === 0 ? '–' : percent(Math.max(...values));
const least = (values: readonly number[]): string =>
  values.length === 0 ? '–' : percent(Math.min(...values));
const byNumber = (x: number, y: number): number => x - y;

export const carryUnit = (system: UnitSystem): ReturnType<typeof unitFor> => unitFor('carry', system);
/** A distance of the simulation, which counts in yards, as a number in a reader's unit. */
export const inReaderUnit = (yards: number, system: UnitSystem): number =>
  toReader(toCanonical(yards, 'yd'), 'carry', system);

/** A distance that is stated in yards, in words in a reader's unit: "8 yards", "7.3 metres". */
export function statedDistance(yards: number, system: UnitSystem): string {
  return mattersWords({ matters: inReaderUnit(yards, system), unit: carryUnit(system) });
}

/** How the figures below were found. */
export function errorRateSource(system: UnitSystem): string {
  return (
    `Our own simulation: ${rates.trials.toLocaleString('en-GB')} made-up sessions a line (fewer for the order of ` +
    `shots), a spread of ${statedDistance(rates.carrySd, system)} in carry, a difference of ` +
    `${statedDistance(rates.matters, system)} matters. Run again with node tests/bench/errorRates.ts.`
  );
}

/** False differences between equal clubs, one golfer: the worst over two to six of them. */
export function falseGapTable(): Table {
  const shots = [...new Set(rates.oneHitter.map(({ shots: own }) => Math.min(...own)))].sort(byNumber);
  const kinds = [...new Set(rates.oneHitter.map(({ spreads, strikes }) => `${spreads} spreads, ${strikes}`))];
  return {
    caption: 'One golfer, equal clubs: tests in 100 with any false difference, the worst of two to six clubs',
    head: ['Shots each (fewest)', ...kinds, 'Likely ranges that hold the truth, at least'],
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
    caption: 'Chance to find a true difference, in 100 tests: as the planner says, and as found',
    head: ['Clubs or balls', 'Shots each', 'Planned', 'Found'],
    rows: rates.power.map(({ contenders, shots, promised, found }) => [
      String(contenders),
      String(shots),
      percent(promised),
      percent(found),
    ]),
  };
}

/** False differences with eight golfers. */
export function eightHittersTable(system: UnitSystem): Table {
  return {
    caption: 'Eight golfers, clubs equal on average: tests in 100 with any false difference',
    head: [
      'Clubs or balls',
      `How golfers differ in what suits them (sd, ${unitWord(carryUnit(system))})`,
      'False differences',
      'Likely ranges that hold the truth',
    ],
    rows: rates.eightHitters.map(({ contenders, interaction, falseGaps, coverage }) => [
      String(contenders),
      interaction.sd === 0
        ? 'not at all'
        : `${printStated(inReaderUnit(interaction.sd, system))}, with ${interaction.of === 'every contender' ? 'every one' : 'one of them'}`,
      percent(falseGaps),
      percent(coverage),
    ]),
  };
}
