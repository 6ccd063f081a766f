import type { APIRoute, GetStaticPaths } from 'astro';
import { exportedSvg } from '../../../../kit/exportedSvg.ts';
import { chartPaths, type ChartPath } from '../../../../site/kitPaths.ts';
import { version } from '../../../../site/version.ts';

export const getStaticPaths = (() => chartPaths({ dev: import.meta.env.DEV })) satisfies GetStaticPaths;

export const GET: APIRoute<ChartPath['props']> = ({ props: { report, item } }) =>
  new Response(exportedSvg(report, item.figure, version), { headers: { 'content-type': 'image/svg+xml' } });
