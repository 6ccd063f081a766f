import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { describe, expect, inject, test } from 'vitest';
import { htmlFiles } from './pages.ts';

const folder = inject('siteFolder');
const slugs = htmlFiles(folder).flatMap((file) => /^reports\/([^/]+)\/index\.html$/.exec(file)?.[1] ?? []);
const read = (slug: string, name: string): string =>
  readFileSync(join(folder, 'reports', slug, name), 'utf8');

interface MetricJson {
  readonly id: string;
  readonly readBy: string;
  readonly role: string;
  readonly byContender: readonly { readonly id: string; readonly n: number; readonly mean: number | null }[];
}
interface FindingsJson {
  readonly contenders: readonly {
    readonly id: string;
    readonly shots: number;
    readonly excluded: number;
  }[];
  readonly metrics: readonly MetricJson[];
}

/** Exact factors (NIST SP 811, appendix B.8), written again here: the code under test does not convert. */
const toSi: Readonly<Record<string, number>> = {
  yd: 0.9144,
  mph: 0.44704,
  'm/s': 1,
  m: 1,
  deg: 1,
  rpm: 1,
  ft: 0.3048,
};

const rowsOf = (csv: string): readonly (readonly string[])[] => parse(csv);

/** One, two and five times powers of ten: what the pages round to. */
const steps: readonly number[] = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100];

describe.each(slugs)('%s: what is given away and what is shown hold the same numbers', (slug) => {
  const findings: FindingsJson = JSON.parse(read(slug, 'findings.json'));
  const [head = [], ...rows] = rowsOf(read(slug, 'shots.csv'));
  const nameColumn = head.indexOf('Contender');
  const counted = rows.filter((row) => row[head.indexOf('Left out')] === '');
  const asId = (heading: string): string =>
    heading
      .replace(/ \(.*\)$/, '')
      .toLowerCase()
      .replaceAll(' ', '_');

  test('shots and left-out shots are counted alike', () => {
    for (const { id, shots, excluded } of findings.contenders) {
      const own = rows.filter((row) => row[nameColumn] === id);
      expect(own).toHaveLength(shots);
      expect(own.filter((row) => row[head.indexOf('Left out')] !== '')).toHaveLength(excluded);
    }
  });

  test('averages calculated from shots.csv are those of findings.json', () => {
    let compared = 0;
    head.forEach((heading, column) => {
      const unit = / \(([^),]+)[^)]*\)$/.exec(heading)?.[1];
      const metric = findings.metrics.find(({ id, readBy }) => id === asId(heading) && readBy === 'monitor');
      const factor = unit === undefined ? undefined : toSi[unit];
      if (metric === undefined || factor === undefined) return;
      for (const { id, n, mean } of metric.byContender) {
        const values = counted
          .filter((row) => row[nameColumn] === id && row[column] !== '')
          .map((row) => Number(row[column]) * factor);
        expect(values).toHaveLength(n);
        const average = values.reduce((sum, value) => sum + value, 0) / values.length;
        expect(Math.abs(average - (mean ?? Number.NaN)), `${heading} of ${id}`).toBeLessThan(
          1e-6 * Math.max(1, Math.abs(average)),
        );
        compared += 1;
      }
    });
    expect(compared).toBeGreaterThan(5);
  });

  test('the averages of the main measure stand on the page as findings.json has them', () => {
    const text = read(slug, 'index.html')
      .replace(/<[^>]*>/g, ' ')
      .replaceAll('&#39;', "'");
    for (const { byContender, id } of findings.metrics.filter(({ role }) => role === 'primary')) {
      for (const { mean } of byContender) {
        const inReaderUnits = [mean ?? Number.NaN, (mean ?? Number.NaN) / 0.9144].flatMap((value) =>
          steps.map((step) =>
            (Math.round(value / step) * step)
              .toFixed(step < 1 ? 1 : 0)
              .replace(/\.0$/, '')
              .replace(/\B(?=(\d{3})+(?!\d))/g, ','),
          ),
        );
        expect(
          inReaderUnits.some((printed) => text.includes(printed)),
          `${id} ${mean}`,
        ).toBe(true);
      }
    }
  });
});
