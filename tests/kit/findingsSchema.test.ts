import { describe, expect, expectTypeOf, test } from 'vitest';
import type { z } from 'zod';
import { findingsJson } from '../../src/kit/findingsJson.ts';
import { findingsSchema, type Findings } from '../../src/findings/findings.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { oddOnes, reports } from './content.ts';
import { manyReports } from './manyReports.ts';

const all = [...reports, ...oddOnes, ...loadSite(manyReports()).reports];

test.each(all.map((report) => [report.source.slug, report] as const))(
  '%s: findings.json is of the published shape',
  (_slug, report) => {
    const read: unknown = JSON.parse(findingsJson(report.findings));
    const { error, data } = findingsSchema.safeParse(read);
    expect(error?.issues ?? []).toEqual([]);
    expect(data).toEqual(read);
  },
);

describe('the schema', () => {
  const [report] = all;
  const good = JSON.parse(findingsJson(report?.findings ?? ({} as Findings))) as Record<string, unknown>;

  test('refuses an unknown key, a missing one, another version', () => {
    expect(findingsSchema.safeParse(good).success).toBe(true);
    expect(findingsSchema.safeParse({ ...good, more: 1 }).success).toBe(false);
    expect(findingsSchema.safeParse({ ...good, metrics: undefined }).success).toBe(false);
    expect(findingsSchema.safeParse({ ...good, version: 1 }).success).toBe(false);
  });

  test('has the top-level keys of the findings, no more and no fewer', () => {
    expectTypeOf<keyof z.infer<typeof findingsSchema>>().toEqualTypeOf<keyof Findings>();
    expect(Object.keys(findingsSchema.shape).toSorted()).toEqual(Object.keys(good).toSorted());
  });
});
