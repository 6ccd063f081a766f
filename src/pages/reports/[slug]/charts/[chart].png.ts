import type { APIRoute, GetStaticPaths } from 'astro';
import { exportedSvg, rasterWidth } from '../../../../kit/exportedSvg.ts';
import { chartPaths, type ChartPath } from '../../../../site/kitPaths.ts';
import { cachedPng } from '../../../../site/rasters.ts';
import { version } from '../../../../site/version.ts';

export const getStaticPaths = (() => chartPaths({ dev: import.meta.env.DEV })) satisfies GetStaticPaths;

export const GET: APIRoute<ChartPath['props']> = async ({ props: { report, item } }) => {
  const png = await cachedPng(exportedSvg(report, item.figure, version), rasterWidth);
  return new Response(new Uint8Array(png), { headers: { 'content-type': 'image/png' } });
};
