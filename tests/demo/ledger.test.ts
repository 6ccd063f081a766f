import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { latestRecord } from '../../src/site/ledger.ts';
import { loadSite } from '../../src/site/siteContent.ts';

/** The demo keeps a register as a shop would: after a change of a demo report `npm run record` belongs into the same commit. */
const site = loadSite(resolve('content'));

test('every published demo report is on record as it stands', () => {
  expect(site.reports.map(({ source }) => latestRecord(source.slug, site.ledger)?.data.length)).toEqual(
    site.reports.map(({ source }) => source.files.length),
  );
  expect(site.problems.map(({ kind }) => kind)).not.toContain('changed-without-correction');
});

test('one test was planned on record before its session, and its page says so', () => {
  const plans = site.reports.map(({ source, findings }) => [source.slug, findings.design.plan] as const);
  expect(plans.filter(([, plan]) => plan === 'on-record')).toEqual([['three-balls-one-iron', 'on-record']]);
  // What the shop says of its other plans stays what it says.
  expect(new Set(plans.map(([, plan]) => plan))).toContain('stated');
});
