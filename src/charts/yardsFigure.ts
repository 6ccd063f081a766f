import type { MetricFindings } from '../findings/findings.ts';
import type { Part } from '../flight/attribution.ts';
import { keyWords } from '../prose/english/charts/gaps.ts';
import { notDrawn } from '../prose/english/charts/notDrawn.ts';
import { noAccount, yardsFinding, yardsQuestion, yardsWords } from '../prose/english/charts/yards.ts';
import { partName, sayPart } from '../prose/english/yards.ts';
import { printDifference, printingOf } from '../prose/printSteps.ts';
import { toReader } from '../prose/readerUnits.ts';
import type { Telling } from '../prose/telling.ts';
import { modelPrinting } from '../prose/unjudgedPrinting.ts';
import { capitalised } from '../prose/words.ts';
import { yardsPart } from '../prose/yardsSplit.ts';
import { bandOf } from './bandOf.ts';
import { absentFigure, figureHead, type Figure } from './figure.ts';
import { gapRow } from './gapRow.ts';
import type { GapRow } from './pooledRowsInput.ts';
import { turnedPair } from './turnedPair.ts';
import { yardsChart } from './yards.ts';

/** *Where the yards come from*: the largest difference in carry that has an account, split over what differed at launch. */
export function yardsFigure(primaries: readonly MetricFindings[], telling: Telling): Figure {
  const { yards } = telling.findings;
  const ofReport = {
    ...figureHead('yards', { of: 'report' }, telling.findings),
    question: yardsQuestion(telling),
  };
  const metric = primaries.find(({ id }) => id === 'carry');
  if (metric === undefined) return absentFigure(ofReport, notDrawn.notCarry);
  const [largest] = yards
    .flatMap(({ a, b, attribution }) => {
      const pair = metric.pairs.find((one) => one.a === a && one.b === b);
      return pair?.estimate == null ? [] : [{ pair, attribution, estimate: pair.estimate }];
    })
    .toSorted((x, y) => Math.abs(y.estimate) - Math.abs(x.estimate));
  if (largest === undefined) return absentFigure(ofReport, notDrawn.noCarryDifference);
  const { pair, attribution, estimate } = largest;
  if (attribution.state === 'not-possible') return absentFigure(ofReport, noAccount(attribution));
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
  } = yardsWords(attribution, metric, a, b, telling);
  const measured = gapRow(measuredName, pair, turned, metric, telling);
  const parts = attribution.parts.map((part) => rowOf(capitalised(partName(part.id, telling)), part));
  const rest = rowOf(restName, attribution.unexplained);
  const told = [[measuredName, measured.told], ...[...parts, rest].map((row) => [row.name, row.words])];
  return yardsChart({
    ...figureHead('yards', { of: 'pair', metric: 'carry', a: pair.a, b: pair.b }, telling.findings),
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
