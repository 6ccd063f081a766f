import type { Findings, MetricFindings } from '../findings/findings.ts';
import type { Part } from '../flight/attribution.ts';
import { keyWords, ownEnds } from '../prose/english/charts/gaps.ts';
import {
  noAccount,
  noCarryDifference,
  noFlightRecorded,
  notCarry,
  yardsFinding,
  yardsQuestion,
  yardsWords,
} from '../prose/english/charts/yards.ts';
import { partName, sayPart } from '../prose/english/yards.ts';
import { printDifference, printingOf } from '../prose/printSteps.ts';
import { toReader } from '../prose/readerUnits.ts';
import { modelPrinting } from '../prose/unjudgedPrinting.ts';
import { capitalised } from '../prose/words.ts';
import { yardsPart } from '../prose/yardsSplit.ts';
import { bandOf } from './bandOf.ts';
import type { Shown } from './chart.ts';
import { drawnSize, sizeColumn, wordsColumn, type ChartNumbers } from './chartNumbers.ts';
import type { ContenderName } from './contenderName.ts';
import { differenceNumbers } from './differenceNumbers.ts';
import { asIntervalRow, gapRow, type GapRow } from './gapRow.ts';
import type { GapWords } from './gapWords.ts';
import { absentChart, drawnChart, type ChartWords, type MadeChart } from './madeChart.ts';
import { outwardRows, refuseOutward } from './outwardRows.ts';
import { turnedPair } from './turnedPair.ts';

/** *Where do the yards come from?*: the largest difference in carry that has an account, split over what differed at launch. */
export function makeYards({ primaries, telling }: Shown): MadeChart {
  const ofReport = { about: { of: 'report' }, question: yardsQuestion(telling) } as const;
  const metric = primaries.find(({ id }) => id === 'carry');
  if (metric === undefined) return absentChart(ofReport, notCarry);
  const largest = largestOf(metric, telling.findings);
  if (largest === undefined) return absentChart(ofReport, noCarryDifference);
  const { pair, attribution, estimate } = largest;
  if (attribution.state === 'not-possible') return absentChart(ofReport, noAccount(attribution));
  const turned = turnedPair(pair, metric, telling);
  const [a, b] = [turned.a.label, turned.b.label];
  const printing = modelPrinting(printingOf(metric, telling));
  const flip = turned.estimate(1) > 0 ? 1 : -1;
  const rowOf = (name: string, found: Part): GapRow => {
    const part = yardsPart(null, found, flip);
    const read = (value: number): number => toReader(value, 'carry', telling.system);
    return {
      name,
      estimate: part.told ? read(part.value) : null,
      interval: { low: read(part.range[0]), high: read(part.range[1]) },
      figure: part.told ? printDifference(part.value, printing) : '',
      words: sayPart(part, [a, b], telling),
      printed: null,
    };
  };
  const {
    tableCaption,
    tableHead,
    measured: measuredName,
    rest: restName,
    ...words
  } = yardsWords(attribution, metric, { a, b }, telling);
  const measured = gapRow(measuredName, pair, turned, { metric, telling });
  const parts = attribution.parts.map((part) => rowOf(capitalised(partName(part.id, telling)), part));
  const rest = rowOf(restName, attribution.unexplained);
  const told = [[measuredName, measured.told], ...[...parts, rest].map((row) => [row.name, row.words])];
  return drawYards({
    about: { of: 'pair', metric: 'carry', a: pair.a, b: pair.b },
    ...words,
    finding: yardsFinding(
      {
        parts: [...attribution.parts, null].map((part) =>
          yardsPart(part?.id ?? null, part ?? attribution.unexplained, flip),
        ),
        gap: turned.estimate(estimate),
        ...{ ahead: a, behind: b },
      },
      metric.class !== 'measured',
      printing,
      telling,
    ),
    ...bandOf(metric, telling),
    key: keyWords([pair], metric.matters, telling),
    description: told.map((cells) => `${cells.join(': ')}.`).join(' '),
    table: { caption: tableCaption, head: tableHead, rows: told },
    a: turned.a,
    b: turned.b,
    measured,
    parts,
    rest,
  });
}

/** The largest difference in carry that was looked into. */
function largestOf(carry: MetricFindings, { yards }: Findings) {
  const [largest] = yards
    .flatMap(({ a, b, attribution }) => {
      const pair = carry.pairs.find((one) => one.a === a && one.b === b);
      return pair?.estimate == null ? [] : [{ pair, attribution, estimate: pair.estimate }];
    })
    .toSorted((x, y) => Math.abs(y.estimate) - Math.abs(x.estimate));
  return largest;
}

/** The difference, its parts and what they leave over. */
export function yardsNumbers({ primaries, telling }: Shown): ChartNumbers {
  const metric = primaries.find(({ id }) => id === 'carry');
  const largest = metric === undefined ? undefined : largestOf(metric, telling.findings);
  if (metric === undefined || largest?.attribution.state !== 'attributed') return { columns: [], rows: [] };
  const { pair, attribution } = largest;
  const { parts, unexplained } = attribution;
  const { names, sizes } = differenceNumbers(metric, telling);
  const named = names.cells(pair);
  const flip = turnedPair(pair, metric, telling).estimate(1) > 0 ? 1 : -1;
  const size = (value: number) => drawnSize(value, 'carry', telling.system);
  const part = (name: string, found: Part) => {
    const { told, value, range } = yardsPart(null, found, flip);
    return [name, ...named, told ? size(value) : null, size(range[0]), size(range[1])];
  };
  return {
    columns: [
      wordsColumn('Part', 'What the difference is put down to by a flight model.'),
      ...names.columns,
      sizeColumn(
        'Best estimate',
        'carry',
        telling.system,
        'Empty where a part is too small or too uncertain.',
      ),
      sizeColumn('From', 'carry', telling.system, 'Where its likely range begins.'),
      sizeColumn('To', 'carry', telling.system, 'Where its likely range ends.'),
    ],
    rows: [
      ['Whole difference', ...named, ...sizes.cells(pair, pair)],
      ...parts.map((found) => part(capitalised(partName(found.id, telling)), found)),
      part('Not explained', unexplained),
    ],
  };
}

/** Where a gap in carry comes from, `a` minus `b`, in the unit the reader sees. */
export interface YardsInput extends ChartWords, Omit<GapWords, 'ends'> {
  /** Stands at the right end. */
  readonly a: ContenderName;
  readonly b: ContenderName;
  /** The gap as it was measured. */
  readonly measured: GapRow;
  /**
   * Ball speed, launch, spin, direction: each with the range of all sets of coefficients together. Where the sets disagree the estimate is
   * null and the words say "not settled".
   */
  readonly parts: readonly GapRow[];
  /** What the parts leave over: "Not explained". */
  readonly rest: GapRow;
  /** What the one at an end of the scale is there: "farther". */
  readonly ahead: string;
}

/**
 * A ledger: the gap as measured, its parts, and on the last line what they do not explain. Absent without a part that has a range.
 * Throws on numbers out of order.
 */
export function drawYards(input: YardsInput): MadeChart {
  const { a, b, measured, parts, rest, ahead } = input;
  const drawing = {
    ...input,
    sections: [
      {
        heading: null,
        rows: [
          asIntervalRow(measured),
          ...parts.map((part, index) => asIntervalRow(part, index === 0)),
          asIntervalRow(rest, true),
        ],
      },
    ],
    ends: ownEnds(a.label, b.label, ahead),
  };
  refuseOutward(drawing);
  const drawn = parts.filter(({ interval }) => interval !== null).length;
  if (drawn === 0) return absentChart(input, noFlightRecorded);
  return drawnChart(input, { drawn, recorded: parts.length, counted: 'parts' }, (layout) =>
    outwardRows(drawing, layout),
  );
}
