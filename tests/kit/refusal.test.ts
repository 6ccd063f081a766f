import { describe, expect, test } from 'vitest';
import { isGap } from '../../src/findings/verdict.ts';
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
      .some(({ p }) => p < 0.05);
    expect(ids.includes('spread')).toBe(told);
  });

  test('a price is offered only for a gap beyond what matters, to the credit of what was compared', () => {
    if (!ids.includes('price')) return;
    const pairs = report.findings.metrics
      .filter(({ role }) => role === 'primary')
      .flatMap((one) => one.pairs);
    expect(pairs.some(({ verdict, credit }) => isGap(verdict) && credit === 'contender')).toBe(true);
  });

  test('where the yards come from is offered only where a part can be named', () => {
    if (!drawn.includes('yards')) return;
    const named = report.findings.yards.some(
      ({ attribution }) =>
        attribution.state === 'attributed' && attribution.parts.some(({ finding }) => finding),
    );
    expect(ids.includes('yards')).toBe(named);
  });

  test('what chance does is offered only where it looks like the answer does', () => {
    for (const metric of report.findings.metrics) {
      const figure = report.figures.find(
        ({ chart, about }) => chart === 'luck' && about.of !== 'report' && about.metric === metric.id,
      );
      if (figure?.kind !== 'drawn' || metric.luck === null) continue;
      const [widest] = metric.pairs.toSorted((x, y) => Math.abs(y.estimate ?? 0) - Math.abs(x.estimate ?? 0));
      const beyond = Math.abs(widest?.estimate ?? 0) > metric.luck.upTo;
      const told = widest?.status === 'clear' || widest?.status === 'size-uncertain';
      expect(ids.includes(figure.id), figure.id).toBe(beyond === told);
    }
  });

  test('what is not offered is named with its reason', () => {
    for (const { id, question } of report.figures)
      if (!ids.includes(id)) expect(kit.notOffered.map((one) => one.question)).toContain(question);
  });
});

test('each of the four is offered by some report and refused by another', () => {
  for (const chart of ['spread', 'price', 'yards', 'luck']) {
    const givers = all.filter(([, report]) =>
      kitOf(report).offered.some(({ figure }) => figure.id === chart),
    );
    expect(givers.length, chart).toBeGreaterThan(0);
    expect(givers.length, chart).toBeLessThan(all.length);
  }
  const refused = all.flatMap(([, report]) => {
    const ids = kitOf(report).offered.map(({ figure }) => figure.id);
    return report.figures.flatMap(({ kind, id, chart }) =>
      kind === 'drawn' && !ids.includes(id) ? chart : [],
    );
  });
  expect(new Set(refused)).toEqual(new Set(['spread', 'yards', 'luck']));
});
