import { fromCanonical, toCanonical } from '../trade/units.ts';
import type { WrittenNumber } from './linterNumbers.ts';
import { metricName } from './metricName.ts';
import { roundTo } from './numbers.ts';
import { printingOf } from './printSteps.ts';
import { toReader, unitFor } from './readerUnits.ts';
import { resolveReference, valueText } from './references.ts';
import { referenceNear, statedFigures, type StatedFigure } from './statedFigures.ts';
import type { Telling } from './telling.ts';
import { listed } from './words.ts';

/** A number of a sentence beside what the shots give for what it is said to be. */
interface WeighedFigure {
  readonly text: string;
  readonly at: number;
  readonly agrees: boolean;
  /** What it would be by the shots: "the average carry of Alder, 237 yards". */
  readonly expected: string;
  /** What to write in its place. */
  readonly cure: string;
}

/** The numbers of a sentence of which it is plain what they are numbers of, each held against the shots. */
export function weighedFigures(sentence: string, telling: Telling): readonly WeighedFigure[] {
  return statedFigures(sentence, telling).flatMap((figure): WeighedFigure[] => {
    const given = figure.of === 'mean' ? averages(figure, telling) : differences(figure, telling);
    if (given.length === 0) return [];
    const { text, at, value, unit, slack } = figure;
    const step = printingOf(figure.metric, telling)[figure.of === 'mean' ? 'averageStep' : 'step'];
    const inUnit = (own: number): number => toReader(own, figure.metric.id, telling.system);
    // What the page prints may be repeated as well as what was worked out.
    const asPrinted = (own: number): number =>
      toCanonical(roundTo(inUnit(own), step), unitFor(figure.metric.id, telling.system));
    const agrees = given.some(({ values }) =>
      [...values, ...values.map(asPrinted)].some(
        (own) => Math.abs(Math.abs(fromCanonical(own, unit)) - value) <= slack * (1 + 1e-9),
      ),
    );
    const what = figure.of === 'mean' ? 'average' : 'difference in';
    return [
      {
        text,
        at,
        agrees,
        expected: `the ${what} ${metricName(figure.metric.id)} ${figure.of === 'mean' ? 'of' : 'between'} ${givenWords(given)}`,
        cure: `Write ${listed(
          given.slice(0, mostOffered).map(({ reference }) => `{{ ${reference} }}`),
          'or',
        )}: it prints what the shots give, and follows them.`,
      },
    ];
  });
}

const mostOffered = 3;

/** What the shots give for one contender or one pair. */
interface Given {
  readonly who: string;
  readonly reference: string;
  readonly prints: string;
  /** Canonical; any of them may be meant. */
  readonly values: readonly number[];
}

const givenWords = (given: readonly Given[]): string =>
  listed(
    given.slice(0, mostOffered).map(({ who, prints }) => `${who}, ${prints}`),
    'or of',
  );

function averages({ metric, ids }: StatedFigure, telling: Telling): readonly Given[] {
  return metric.byContender.flatMap(({ id, mean }): Given[] => {
    if (mean === null || !ids.includes(id)) return [];
    const words = ['mean', metric.id, id];
    return [{ who: telling.nameOf(id), ...printed(words, telling), values: [mean] }];
  });
}

/** A difference may be typed as it was judged, or as one average less the other. */
function differences({ metric, ids }: StatedFigure, telling: Telling): readonly Given[] {
  const mean = (id: string): number | null => metric.byContender.find((own) => own.id === id)?.mean ?? null;
  return metric.pairs.flatMap(({ a, b, estimate }): Given[] => {
    const isMeant =
      ids.length === 1 ? ids.includes(a) || ids.includes(b) : ids.includes(a) && ids.includes(b);
    if (estimate === null || !isMeant) return [];
    const [first, second] = [mean(a), mean(b)];
    const [ahead, behind] = estimate < 0 ? [b, a] : [a, b];
    return [
      {
        who: `${telling.nameOf(ahead)} and ${telling.nameOf(behind)}`,
        ...printed(['apart', metric.id, ahead, behind], telling),
        values: [estimate, ...(first === null || second === null ? [] : [first - second])],
      },
    ];
  });
}

const printed = (words: readonly string[], telling: Telling): Pick<Given, 'reference' | 'prints'> => ({
  reference: words.join(' '),
  prints: valueText(resolveReference(words, telling, [])),
});

/** What to write for a number that nothing gives: the value of the one named beside it, where that is plain. */
export function valueInstead(sentence: string, number: WrittenNumber, telling: Telling): string {
  const near = referenceNear(sentence, number, telling);
  const { reference, prints } = near === null ? nothingNear : printed(near, telling);
  return prints === '' ? 'for example {{ mean carry ... }}' : `{{ ${reference} }} prints ${prints}`;
}

const nothingNear = { reference: '', prints: '' };
