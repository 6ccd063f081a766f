import type { APIRoute, GetStaticPaths } from 'astro';
import { findingsJson } from '../../../kit/findingsJson.ts';
import type { Report } from '../../../kit/report.ts';
import { givingPaths } from '../../../site/kitPaths.ts';

export const getStaticPaths = (() => givingPaths({ dev: import.meta.env.DEV })) satisfies GetStaticPaths;

export const GET: APIRoute<{ readonly report: Report }> = ({ props: { report } }) =>
  new Response(findingsJson(report.findings), { headers: { 'content-type': 'application/json' } });
