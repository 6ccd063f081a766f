import type { APIRoute, GetStaticPaths } from 'astro';
import { dataPackage } from '../../../kit/dataPackage.ts';
import type { Report } from '../../../kit/report.ts';
import { dataTools } from '../../../site/dataTools.ts';
import { givingPaths } from '../../../site/kitPaths.ts';

export const getStaticPaths = (() => givingPaths({ dev: import.meta.env.DEV })) satisfies GetStaticPaths;

export const GET: APIRoute<{ readonly report: Report }> = ({ props: { report } }) =>
  new Response(dataPackage(report, dataTools), { headers: { 'content-type': 'application/json' } });
