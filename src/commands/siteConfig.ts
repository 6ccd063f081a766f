import type { AstroIntegration, AstroUserConfig } from 'astro';
import { contentWatch } from '../site/contentWatch.ts';
import { finishedSite } from '../site/finishedSite.ts';
import { siteMap } from '../site/siteMap.ts';
import { specimens } from '../site/specimens.ts';
import type { ContentGate } from './contentGate.ts';

/** The framework's configuration for its own commands, `astro build` and `astro dev`. */
export function siteConfig(gate: ContentGate): AstroUserConfig {
  // The gate last: when it publishes, the site is whole.
  return pagesConfig([contentWatch(), finishedSite(), siteMap(gate.site), gate.integration]);
}

/** How pages are compiled and rendered, whichever command does it. */
export function pagesConfig(integrations: readonly AstroIntegration[]): AstroUserConfig {
  return {
    srcDir: './src',
    publicDir: './public',
    trailingSlash: 'always',
    compressHTML: true,
    devToolbar: { enabled: false },
    // We render no markdown by Astro, and its highlighter would need inline styles.
    markdown: { syntaxHighlight: false },
    // Pages are rendered while others are written: a fifth less time for them.
    // Styles stand in the page: one that had to be fetched held up the first painting on a phone for 0.3 s.
    build: { format: 'directory', inlineStylesheets: 'always', concurrency: 16 },
    vite: {
      // Data addresses would need a hole in the content security policy.
      build: { assetsInlineLimit: 0 },
      // A native module and one that reads a file beside itself: neither can be bundled with the pages.
      ssr: { external: ['@resvg/resvg-js', 'subset-font'] },
    },
    security: {
      csp: {
        directives: [
          "default-src 'none'",
          "img-src 'self'",
          "font-src 'self'",
          "connect-src 'self'",
          "base-uri 'none'",
          "form-action 'none'",
        ],
      },
    },
    integrations: [specimens(), ...integrations],
  };
}
