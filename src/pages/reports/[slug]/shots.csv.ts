import type { APIRoute, GetStaticPaths } from 'astro';
import { shotsCsv } from '../../../kit/shotsCsv.ts';
import type { Report } from '../../../kit/report.ts';
import { givingPaths } from '../../../site/kitPaths.ts';

export const getStaticPaths = (() => givingPaths({ dev: import.meta.env.DEV })) satisfies GetStaticPaths;

export const GET: APIRoute<{ readonly report: Report }> = ({ props: { report } }) =>
  new Response(shotsCsv(report), { headers: { 'content-type': 'text/csv; charset=utf-8' } });
