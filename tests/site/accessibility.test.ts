import pa11yCi from 'pa11y-ci';
import { describe, expect, test } from 'vitest';
import { chromiumLaunch } from './browser.ts';
import { allPages, oddPages } from './sites.ts';

const themes = [
  ['light', false],
  ['dark', true],
] as const;

/** WCAG 2.2 AA by axe-core and by HTML_CodeSniffer on every page that was built, none left out. */
describe('every built page, by both pa11y runners', () => {
  test.each(themes)('has no error in the %s theme', async (_name, dark) => {
    const pages = [...allPages, ...oddPages].map(({ address }) => address);
    expect(pages.length).toBeGreaterThan(80);
    const { total, results } = await pa11yCi(pages, {
      runners: ['axe', 'htmlcs'],
      standard: 'WCAG2AA',
      // axe cannot see what lies behind SVG text and asks for a person; contrast is tested from the tokens.
      levelCapWhenNeedsReview: 'warning',
      useIncognitoBrowserContext: false,
      concurrency: 3,
      timeout: 120_000,
      log: { info: () => undefined, error: () => undefined, debug: () => undefined },
      chromeLaunchConfig: chromiumLaunch(dark),
    });
    const audited = Object.entries(results);
    const found = audited.flatMap(([url, issues]) =>
      issues.map((issue) => ({ url, ...issue, message: issue.message })),
    );
    expect(found).toEqual([]);
    expect(audited.map(([url]) => url).sort()).toEqual([...pages].sort());
    expect(total).toBe(pages.length);
  });
});
