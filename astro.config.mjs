import { defineConfig } from 'astro/config';
import { contentWatch } from './src/site/contentWatch.ts';
import { finishedSite } from './src/site/finishedSite.ts';
import { siteMap } from './src/site/siteMap.ts';
import { specimens } from './src/site/specimens.ts';

export default defineConfig({
  srcDir: './src',
  publicDir: './public',
  trailingSlash: 'always',
  compressHTML: true,
  devToolbar: { enabled: false },
  // We render no markdown by Astro, and its highlighter would need inline styles.
  markdown: { syntaxHighlight: false },
  // Pages are rendered while others are written: a fifth less time for them.
  build: { format: 'directory', inlineStylesheets: 'never', concurrency: 16 },
  // Data addresses would need a hole in the content security policy.
  vite: { build: { assetsInlineLimit: 0 } },
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
  // A page whose key is as it was is copied; see `cacheKey` in the pages and `src/site/cacheKey.ts`.
  experimental: { incrementalBuild: true },
  integrations: [contentWatch(), specimens(), finishedSite(), siteMap()],
});
