import pa11yCi from 'pa11y-ci';
import type { Fault, Theme } from './audit.ts';
import { chromiumLaunch } from './browser.ts';

export interface ByPa11y {
  /** Addresses, sorted. */
  readonly audited: readonly string[];
  readonly faults: readonly (Fault & { readonly address: string })[];
}

/** Pages as pa11y-ci audits them by axe-core and HTML_CodeSniffer. @throws where a page cannot be audited */
export async function byPa11y(addresses: readonly string[], theme: Theme): Promise<ByPa11y> {
  const { results } = await pa11yCi(addresses, {
    runners: ['axe', 'htmlcs'],
    standard: 'WCAG2AA',
    // axe cannot see what lies behind SVG text and asks for a person; contrast is tested from the tokens.
    levelCapWhenNeedsReview: 'warning',
    useIncognitoBrowserContext: false,
    concurrency: 3,
    timeout: 120_000,
    log: { info: () => undefined, error: () => undefined, debug: () => undefined },
    chromeLaunchConfig: chromiumLaunch(theme === 'dark'),
  });
  const faults = Object.entries(results).flatMap(([address, issues]) =>
    issues.map((issue) => {
      if (issue instanceof Error) throw issue;
      const { runner, code, selector } = issue;
      return { address, theme, runner, code, where: selector };
    }),
  );
  return { audited: Object.keys(results).sort(), faults };
}
