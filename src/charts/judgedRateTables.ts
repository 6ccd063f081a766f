import { quoted } from '../prose/english/answerWords.ts';
import rates from './errorRates.json' with { type: 'json' };
import { printStated } from '../prose/numbers.ts';
import { unitWord, type UnitSystem } from '../prose/readerUnits.ts';
import { carryUnit, inReaderUnit, percent, statedDistance } from './errorRateTables.ts';
import type { Table } from './table.ts';

/** A table of error rates with the sentences that lead to it. */
interface RateTable {
  readonly words: string;
  readonly table: Table;
}

const { judged } = rates;
const inHundred = (values: readonly number[]): string => percent(Math.max(...values));
const distanceOf = (yards: number, system: UnitSystem): string =>
  yards === 0 ? '0' : printStated(inReaderUnit(yards, system));

/** What was made up for the tables of `judgedRateTables`. */
export function judgedRateSource(): string {
  return (
    `For the lines below ${judged.sessions.toLocaleString('en-GB')} made-up tests each were judged as a report is: order, ` +
    'ranges, answers, and whether the order of the shots leaves the cause open. A false difference is one that a report ' +
    'would have put down to the club.'
  );
}

/** Error rates of whole tests, judged as reports are. */
export function judgedRateTables(system: UnitSystem): readonly RateTable[] {
  return [
    golfersTold(),
    inRounds(system),
    halfTheOtherWay(system),
    forEachGolfer(system),
    inSpells(system),
    besides(),
    plans(system),
  ];
}

function golfersTold(): RateTable {
  return {
    words: 'Golfers who gain alike: how often our pages would say that two of them differ.',
    table: {
      caption: 'Golfers with the same true difference: tests in 100 that tell any two of them apart',
      head: ['Golfers', 'Told apart'],
      rows: judged.identicalGolfers.map(({ golfers, toldApart }) => [String(golfers), percent(toldApart)]),
    },
  };
}

function inRounds(system: UnitSystem): RateTable {
  const likenesses = [...new Set(judged.pairedRounds.map(({ correlation }) => correlation))];
  const lines = Map.groupBy(judged.pairedRounds, ({ rounds, drift }) => `${rounds} ${drift}`);
  return {
    words:
      'One golfer who hits two clubs in rounds, and who changes steadily from the first shot to the last, or whose shots ' +
      'are like the one before (correlation of neighbouring shots).',
    table: {
      caption: 'One golfer, two equal clubs in rounds: tests in 100 with a false difference',
      head: [
        'Rounds',
        `Drift, first to last shot (${unitWord(carryUnit(system))})`,
        ...likenesses.map((own) => `Correlation ${own}`),
      ],
      rows: [...lines.values()].map((cells) => [
        String(cells[0]?.rounds ?? ''),
        distanceOf(cells[0]?.drift ?? 0, system),
        ...cells.map(({ falseGaps }) => percent(falseGaps)),
      ]),
    },
  };
}

function halfTheOtherWay(system: UnitSystem): RateTable {
  const { gap, found, creditedOfFound } = judged.shuffled;
  return {
    words:
      'Eight golfers who hit all shots with one club before the next, half of them in the opposite order. ' +
      `Where they hit in a shuffled order instead, a true difference of ${statedDistance(gap, system)} is seen in ` +
      `${percent(found)} of 100 tests, and put down to the club in ${percent(creditedOfFound)} of 100 of those.`,
    table: {
      caption: 'Eight golfers, equal clubs, half of them in the opposite order: tests in 100',
      head: [
        `Drift (${unitWord(carryUnit(system))})`,
        'How golfers differ in it (sd)',
        'With a false difference',
        'Cause not left open',
      ],
      rows: judged.counterbalanced.map(({ drift, ownDrift, falseGaps, credited }) => [
        distanceOf(drift, system),
        distanceOf(ownDrift, system),
        percent(falseGaps),
        percent(credited),
      ]),
    },
  };
}

function forEachGolfer(system: UnitSystem): RateTable {
  const [first] = judged.eachGolfer;
  return {
    words:
      `Three golfers whom different clubs may suit. ${quoted('level')} is said only where it holds for each of ` +
      `them. (${first?.shots ?? 0} shots each with both.)`,
    table: {
      caption: `Three golfers: tests in 100 that say ${quoted('level').toLowerCase()}`,
      head: [
        `How golfers differ in what suits them (sd, ${unitWord(carryUnit(system))})`,
        'Say so',
        'Say so falsely: it matters to one of the three',
        'Would say so falsely by the average alone',
      ],
      rows: judged.eachGolfer.map(({ ownGap, nothingMatters, falsely, falselyByMean }) => [
        distanceOf(ownGap, system),
        percent(nothingMatters),
        percent(falsely),
        percent(falselyByMean),
      ]),
    },
  };
}

function inSpells(system: UnitSystem): RateTable {
  return {
    words:
      'Several shots in a row with each club, three at a time. Shots of one spell may be like each other; a difference must ' +
      'then show from spell to spell too.',
    table: {
      caption: 'Equal clubs in spells of three: tests in 100 with a false difference',
      head: [
        'Clubs',
        'Shots each',
        'Correlation of neighbouring shots',
        `What all shots of a spell share (sd, ${unitWord(carryUnit(system))})`,
        'False differences',
      ],
      rows: judged.alikeVisits.map(({ contenders, shots, correlation, ofSpell, falseGaps }) => [
        String(contenders),
        String(shots),
        String(correlation),
        distanceOf(ofSpell, system),
        percent(falseGaps),
      ]),
    },
  };
}

function besides(): RateTable {
  return {
    words:
      'Measures that were not chosen before hitting: the more of them are looked at, the surer one shows a difference by ' +
      'chance. That is why the page tells how many we looked at.',
    table: {
      caption: 'Equal clubs, measures besides the main one: how many show a difference',
      head: [
        'Measures looked at',
        'By chance, as the page tells',
        'Found, on average',
        'Tests in 100 with any',
      ],
      rows: judged.exploratory.map(({ measures, showing, anyOfSession }) => [
        String(measures),
        percent(0.05 * measures),
        percent(showing),
        percent(anyOfSession),
      ]),
    },
  };
}

function plans(system: UnitSystem): RateTable {
  const apart = [...judged.plans, ...rates.power].map(({ promised, found }) => Math.abs(promised - found));
  return {
    words:
      'What the planner says before hitting, by the order it plans, beside what is then found. ' +
      `The two differ by ${inHundred(apart)} in 100 at most, here and in the table above; luck alone makes such lines differ by 1 or 2.`,
    table: {
      caption:
        'Chance to find a true difference by the order of hitting, in 100 tests: as planned, and as found',
      head: [
        'Order',
        'Clubs',
        'Shots each',
        `True difference (${unitWord(carryUnit(system))})`,
        'Planned',
        'Found',
      ],
      rows: judged.plans.map(({ order, contenders, shots, shotsAVisit, gap, promised, found }) => [
        order === 'rotation' ? 'rounds' : `spells of ${shotsAVisit}`,
        String(contenders),
        String(shots),
        printStated(inReaderUnit(gap, system)),
        percent(promised),
        percent(found),
      ]),
    },
  };
}
