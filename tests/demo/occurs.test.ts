import { describe, expect, test } from 'vitest';
import { reportCharts } from '../../src/charts/charts.ts';
import type { OverlayId, PairFindings } from '../../src/findings/findings.ts';
import type { VerdictId } from '../../src/findings/verdict.ts';
import { findingsSchema } from '../../src/findings/findings.ts';
import { kitOf } from '../../src/kit/kitOf.ts';
import { reports } from '../kit/content.ts';

/** Every verdict: the type of this table refuses to leave one out. */
const verdicts: Readonly<Record<VerdictId, true>> = {
  clear: true,
  'size-unsure': true,
  'maybe-small': true,
  small: true,
  level: true,
  'too-close': true,
  'not-judged': true,
};

/**
 * Every overlay with the role of the metric that it can occur on: the type refuses to leave one out. Readings that are
 * missing unevenly, or a measure of what matters of its own, no shop would show as an example.
 */
const overlays: Readonly<
  Record<
    Exclude<OverlayId, 'uneven-readings' | 'matters-unusual' | 'golfers-apart'>,
    'primary' | 'exploratory'
  >
> = {
  'one-hitter': 'primary',
  'few-hitters': 'primary',
  'few-shots': 'primary',
  'one-example': 'primary',
  'one-after-another': 'primary',
  'order-unknown': 'primary',
  'order-lever': 'primary',
  'order-drift': 'primary',
  'order-few-visits': 'primary',
  'visits-alike': 'primary',
  'mixed-with-swing': 'primary',
  'not-planned': 'exploratory',
  'rests-on-one-shot': 'primary',
  'depends-on-left-out': 'primary',
  'near-device': 'primary',
  'modelled-reading': 'primary',
  leans: 'primary',
  'found-too-big': 'primary',
};

const pairsOf = (wanted: 'primary' | 'exploratory'): readonly PairFindings[] =>
  reports.flatMap(({ findings }) =>
    findings.metrics.flatMap(({ role, pairs }) => (role === wanted ? pairs : [])),
  );

describe('among the demo reports', () => {
  test.each(Object.keys(verdicts))('the verdict %s is given on what was asked', (verdict) => {
    expect(pairsOf('primary').map((pair): string => pair.verdict)).toContain(verdict);
  });

  test.each(Object.entries(overlays))('the overlay %s is said', (overlay, role) => {
    expect(pairsOf(role).flatMap((pair): readonly string[] => pair.overlays)).toContain(overlay);
  });

  test('launch and spin is drawn of none: what the one driver was launched at lies beyond where the model carries farthest', () => {
    const why = reports.flatMap(({ figures }) =>
      figures.flatMap((figure) =>
        figure.chart === 'launch-and-spin' ? [figure.kind === 'drawn' ? 'drawn' : figure.why] : [],
      ),
    );
    expect(why).toContain('No shot lies where the model finds the most carry.');
    expect(why).not.toContain('drawn');
  });

  const everyOther = reportCharts.filter((chart) => chart !== 'launch-and-spin');
  test.each(everyOther)('the chart %s is drawn, and given away', (chart) => {
    const drawn = reports.flatMap(({ figures }) => figures.filter(({ kind }) => kind === 'drawn'));
    expect(drawn.map(({ id }) => id)).toContain(chart);
    expect(reports.flatMap((report) => kitOf(report).offered.map(({ figure }) => figure.id))).toContain(
      chart,
    );
  });

  test('every credit, standing of a claim that is let through, and way to hold or not', () => {
    const pairs = pairsOf('primary');
    expect(new Set(pairs.map(({ credit }) => credit)).size).toBe(2);
    const standings = reports.flatMap(({ findings }) => findings.claims.map(({ standing }) => standing));
    expect(new Set(standings)).toEqual(new Set(['borne-out', 'weaker-than-said', 'not-shown']));
    const states = pairs.flatMap(({ holds }) => holds.map(({ state }) => state));
    expect(new Set(states)).toEqual(new Set(['agrees', 'narrow', 'fails']));
  });
});

test('the lists above are those of the published shape, and the charts those that reports have', () => {
  expect(
    [...Object.keys(overlays), 'golfers-apart', 'uneven-readings', 'matters-unusual'].toSorted(),
  ).toEqual(findingsSchema.shape.caveats.element.options.toSorted());
  const charts = reports.flatMap((report) => report.figures.map(({ chart }) => chart));
  expect([...new Set(charts)].toSorted()).toEqual(reportCharts.toSorted());
});
