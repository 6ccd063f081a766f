import type { APIRoute, GetStaticPaths } from 'astro';
import { shotsCsv } from '../../../kit/shotsCsv.ts';
import type { Report } from '../../../kit/report.ts';
import { shownReports, siteContent } from '../../../site/siteContent.ts';

export const getStaticPaths = (() =>
  shownReports(siteContent({ fresh: import.meta.env.DEV }), { drafts: import.meta.env.DEV })
    .filter(({ source }) => source.front.status !== 'withdrawn')
    .map((report) => ({ params: { slug: report.source.slug }, props: { report } }))) satisfies GetStaticPaths;

export const GET: APIRoute<{ readonly report: Report }> = ({ props: { report } }) =>
  new Response(shotsCsv(report), { headers: { 'content-type': 'text/csv; charset=utf-8' } });
