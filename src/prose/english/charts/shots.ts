import type { MetricFindings } from '../../../findings/findings.ts';
import { metrics, type MetricId } from '../../../trade/metrics.ts';
import { formatNumber } from '../../numbers.ts';
import { shortUnit, unitFor, unitWord } from '../../readerUnits.ts';
import type { Telling } from '../../telling.ts';
import { capitalised, counted, countWord } from '../../words.ts';
import { comparedNames, inBrackets } from './ranges.ts';

/** What a hollow mark with a stroke through says. */
export const leftOutWord = 'left out';

/** The words of *All the shots*; golfers have strips of their own, or stand together; `ranges` says whether averages have any. */
export function shotsWords(
  metric: MetricFindings,
  apart: 'apart' | 'together',
  ranges: boolean,
  telling: Telling,
) {
  const leftOut = telling.findings.contenders.reduce((sum, { excluded }) => sum + excluded, 0);
  const { name } = metrics[metric.id];
  const of = comparedNames(telling);
  const oneGolfer = telling.findings.design.hitters === 1;
  return {
    subject: `${capitalised(name)} of every shot with ${of}`,
    signs: [],
    key: {
      shot: 'one shot',
      ring:
        apart === 'apart'
          ? 'average'
          : `average of all ${countWord(telling.findings.design.hitters)} golfers, not told apart here`,
      bar: ranges
        ? `likely range of the average (95% confidence, each ${apart === 'apart' && !oneGolfer ? 'row' : telling.noun} by itself)`
        : null,
    },
    ...(leftOut === 0
      ? {}
      : {
          onPage: `We left out ${counted(leftOut, 'shot')}, for the ${leftOut === 1 ? 'reason' : 'reasons'} given below.`,
        }),
    numbers: `${name} of the shots`,
  };
}

/** What a scale of a metric's own values measures: "Carry in yards". */
export function axisOf({ id }: MetricFindings, { system }: Telling): string {
  const word = unitWord(unitFor(id, system));
  return capitalised(word === '' ? metrics[id].name : `${metrics[id].name} in ${word}`);
}

/** A strip of one golfer: "Bracken, 88 mph, handicap 16-20". */
export const golferStrip = (name: string, golfer: string): string => `${name}, ${golfer}`;

/** Beside the ring: "237, likely 234 to 240". */
export const averageWords = (average: string, [lower, upper]: readonly [string, string]): string =>
  `${average}, likely ${lower} to ${upper}`;

/** A strip in a description: "Heron: 12 shots, 225 to 245 yards, average 237, likely 234 to 240". */
export const stripInWords = (name: string, numbers: string, average: string | null): string =>
  `${name}: ${numbers}${average === null ? '' : `, average ${average}`}`;

/** Beside a strip's name: "12 shots, 225 to 245 yards". */
export function stripNumbers(
  shots: number,
  range: { readonly least: string; readonly most: string } | null,
): string {
  const count = counted(shots, 'shot');
  return range === null ? `${count}, no reading` : `${count}, ${range.least} to ${range.most}`;
}

/** Caption and heads of the table of averages; the averages of several golfers have no range, and their spread is of all. */
export function shotTableWords(metric: MetricFindings, { noun, system, findings }: Telling) {
  const { name } = metrics[metric.id];
  const several = findings.design.hitters > 1;
  return {
    caption: `${capitalised(name)}${inBrackets(shortUnit(unitFor(metric.id, system)))} with each ${noun}${
      several ? '; averages of several golfers have no likely range of their own' : ''
    }`,
    head: [
      capitalised(noun),
      'Shots',
      'Left out',
      'Average',
      'Likely range, from',
      'to',
      several ? 'Spread (sd), golfers included' : 'Spread (sd)',
      'Median',
      'Lowest',
      'Highest',
    ],
  };
}

/** Of more shots than a chart can hold. */
export function evenlyDrawn(shots: number, drawn: number): string {
  return `Of ${formatNumber(shots, 0)} shots ${formatNumber(drawn, 0)} are drawn, spread evenly over the session; the numbers are of all.`;
}

/** What a chart leaves out of what it could show; empty where nothing is missing. */
export function notDrawnWords(
  missing: number,
  of: 'shots' | 'pairs' | 'comparisons' | 'spreads' | 'golfers' | 'reports' | 'parts' | 'averages',
  tableHasThem: boolean,
): string {
  if (missing === 0) return '';
  const things = counted(missing, of.slice(0, -1));
  if (of === 'shots') return `${capitalised(things)} had no reading and cannot be drawn.`;
  return `${capitalised(things)} not drawn${tableHasThem ? '; the numbers are in the table' : ''}.`;
}

/** "All 36 shots", "All 144 shots of eight golfers", "34 of 36 shots, two of them left out of the averages". */
export function shotsFinding(
  {
    drawn,
    recorded,
    leftOut,
  }: { readonly drawn: number; readonly recorded: number; readonly leftOut: number },
  metric: MetricId,
  { findings }: Telling,
): string {
  const { hitters } = findings.design;
  const several = findings.metrics.filter(({ role }) => role === 'primary').length > 1;
  const shots =
    drawn === recorded
      ? `All ${formatNumber(recorded, 0)} shots`
      : `${formatNumber(drawn, 0)} of ${formatNumber(recorded, 0)} shots`;
  const golfers = hitters > 1 ? ` of ${countWord(hitters)} golfers` : '';
  const without = leftOut === 0 ? '' : `, ${countWord(leftOut)} of them left out of the averages`;
  const measure = several ? `: ${metrics[metric].name}` : '';
  return `${shots}${golfers}${without}${measure}`;
}

/** Why it is not drawn. */
export const noShots = 'No shot has a reading to draw.';
