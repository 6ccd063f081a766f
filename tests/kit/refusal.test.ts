import { describe, expect, test } from 'vitest';
import { kitOf } from '../../src/kit/kitOf.ts';
import { oddOnes, reports } from './content.ts';

const all = [...reports, ...oddOnes].map((report) => [report.source.slug, report] as const);

describe.each(all)('%s', (_slug, report) => {
  const kit = kitOf(report);
  const ids = kit.offered.map(({ figure }) => figure.id);
  const drawn = report.figures.filter(({ kind }) => kind === 'drawn').map(({ id }) => id);

  test('a chart of spreads is offered only where two of them are told apart', () => {
    if (!drawn.includes('spread')) return;
    const told = report.findings.metrics
      .filter(({ id }) => id === 'carry' || id === 'side')
      .flatMap(({ spread }) => spread?.pairs ?? [])
      .some(({ clear }) => clear);
    expect(ids.includes('spread')).toBe(told);
  });

  test('where the yards come from is offered only where a part can be named', () => {
    if (!drawn.includes('yards')) return;
    const named = report.findings.yards.some(
      ({ attribution }) =>
        attribution.state === 'attributed' && attribution.parts.some(({ finding }) => finding),
    );
    expect(ids.includes('yards')).toBe(named);
  });

  test('chance is offered only where it goes with the answer about its pair', () => {
    for (const figure of report.figures) {
      if (figure.kind !== 'drawn' || figure.chart !== 'luck' || figure.about.of !== 'pair') continue;
      const { metric: id, a, b } = figure.about;
      const metric = report.findings.metrics.find((one) => one.id === id);
      const pair = metric?.pairs.find((one) => one.a === a && one.b === b);
      if (metric?.luck == null || pair?.estimate == null) throw new Error(figure.id);
      const beyond = Math.abs(pair.estimate) > metric.luck.upTo;
      const seen = ['clear', 'size-uncertain', 'small', 'cause-unclear'].includes(pair.status);
      expect(ids.includes(figure.id), `${figure.id}: ${pair.status}`).toBe(beyond === seen);
    }
  });

  test('what is not offered is named with its reason', () => {
    for (const { id, question } of report.figures)
      if (!ids.includes(id)) expect(kit.notOffered.map((one) => one.question)).toContain(question);
  });
});

test('each that needs something is offered by some report and refused by another', () => {
  for (const chart of ['spread', 'yards', 'luck']) {
    const givers = all.filter(([, report]) =>
      kitOf(report).offered.some(({ figure }) => figure.id === chart),
    );
    expect(givers.length, chart).toBeGreaterThan(0);
    expect(givers.length, chart).toBeLessThan(all.length);
  }
  const refused = all.flatMap(([, report]) => {
    const drawn = report.figures.filter(({ kind }) => kind === 'drawn').map(({ id }) => id);
    const ids = kitOf(report).offered.map(({ figure }) => figure.id);
    return drawn.filter((id) => !ids.includes(id));
  });
  expect(new Set(refused)).toEqual(new Set(['luck', 'spread', 'yards']));
});
