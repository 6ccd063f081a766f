import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { finishReport } from './finishReport.ts';

/** For the framework's own build: finishes every report when all pages are written. */
export function finishedSite(): AstroIntegration {
  let origin: string | null = null;
  let base = '/';
  return {
    name: 'finished-site',
    hooks: {
      'astro:config:done': ({ config }) => {
        origin = config.site === undefined ? null : new URL(config.site).origin;
        base = config.base.endsWith('/') ? config.base : `${config.base}/`;
      },
      'astro:build:done': ({ dir }) => {
        const folder = fileURLToPath(dir);
        const reports = join(folder, 'reports');
        if (!existsSync(reports)) return;
        for (const slug of readdirSync(reports).sort()) finishReport(slug, { folder, base, origin });
      },
    },
  };
}
