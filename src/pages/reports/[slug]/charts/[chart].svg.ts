import type { APIRoute, GetStaticPaths } from 'astro';
import { exportedSvgFile } from '../../../../site/exportedFiles.ts';
import { exportPaths, type ExportPath } from '../../../../site/kitPaths.ts';

export const getStaticPaths = (() =>
  exportPaths({ dev: import.meta.env.DEV, ending: 'svg' })) satisfies GetStaticPaths;

export const GET: APIRoute<ExportPath['props']> = async ({ props: { report, picture } }) =>
  new Response(await exportedSvgFile(report, picture), { headers: { 'content-type': 'image/svg+xml' } });
