import { describe, expect, test } from 'vitest';
import { captionOf } from '../../src/charts/figure.ts';
import { makeFigures } from '../../src/charts/makeFigures.ts';
import { captions } from '../../src/kit/captions.ts';
import { disclosure } from '../../src/prose/disclosure.ts';
import { toldChecks } from '../../src/prose/english/checks.ts';
import { metricIds } from '../../src/trade/metrics.ts';
import { around, reportOf } from '../findings/reportOf.ts';
import { answerSentences, pairNumbers, pairSentences } from './said.ts';
import { metricOf, tellingFor, waysToComeOut } from './tellings.ts';

/** Clubs are often told apart by a number; read on, it would seem to be part of what was measured. */
const names = { a: 'Mid 8', b: 'Low 7' };
const runTogether = /(Mid 8|Low 7) \d/;

describe('a name that ends in a number does not run into one', () => {
  test.each(waysToComeOut)('$name', ({ told, design }) => {
    for (const id of metricIds) {
      const metric = metricOf({ ...told, metric: id });
      const telling = tellingFor([metric], { names, design: design ?? {} });
      const words = [
        ...answerSentences(metric, telling),
        ...pairNumbers(metric, telling),
        ...pairSentences(metric, telling),
        ...toldChecks(metric, telling).flatMap(({ pair, lines }) => [pair, ...lines]),
      ];
      for (const said of words) expect(said).not.toMatch(runTogether);
    }
  });

  test('in captions, descriptions and conditions of a report', () => {
    const report = reportOf({
      shots: {
        'Carry (yd)': { alder: around(237), birch: around(231).toReversed() },
        'Side (yd)': { alder: around(2), birch: around(-3).toReversed() },
        'Club Speed (mph)': { alder: around(100, 0.3), birch: around(99, 0.3) },
      },
      front: {
        contenders:
          '{alder: {label: Mid 8, supplied_by: our stock, sold_here: new}, birch: {label: Low 7, supplied_by: our stock, sold_here: new}}',
        exclusions: '[{contender: birch, shot: 4, rule: misread, reason: no spin}]',
        invented_data: 'yes',
      },
    });
    const { source, session, telling } = report;
    const figures = makeFigures(telling, session, source.front);
    const said = [
      ...figures.flatMap((figure) =>
        figure.kind === 'drawn'
          ? [captionOf(figure), figure.description, ...Object.values(captions(report, figure))]
          : [figure.why],
      ),
      ...disclosure({ source, session, telling, version: '0' }).flatMap(({ items }) =>
        items.flatMap(({ value }) => value ?? []),
      ),
    ];
    expect(said.join('\n')).toContain('12 with Mid 8, 12 with Low 7 (1 left out)');
    expect(said.join('\n')).toMatch(
      /Within 15 yards of the line: \d+ of 12 with Mid 8, \d+ of 11 with Low 7\./,
    );
    for (const words of said) expect(words).not.toMatch(runTogether);
  });
});
