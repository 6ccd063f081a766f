import type { APIRoute, GetStaticPaths } from 'astro';
import { chartData } from '../../../../kit/chartData.ts';
import { chartPaths, type ChartPath } from '../../../../site/kitPaths.ts';

export const getStaticPaths = (() => chartPaths({ dev: import.meta.env.DEV })) satisfies GetStaticPaths;

export const GET: APIRoute<ChartPath['props']> = ({ props: { report, item } }) =>
  new Response(chartData(report, item.figure).csv, {
    headers: { 'content-type': 'text/csv; charset=utf-8' },
  });
