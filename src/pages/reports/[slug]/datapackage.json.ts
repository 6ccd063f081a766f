import type { APIRoute, GetStaticPaths } from 'astro';
import { dataPackage } from '../../../kit/dataPackage.ts';
import type { Report } from '../../../kit/report.ts';
import { givingReports } from '../../../site/kitPaths.ts';

export const getStaticPaths = (() =>
  givingReports({ dev: import.meta.env.DEV }).map((report) => ({
    params: { slug: report.source.slug },
    props: { report },
  }))) satisfies GetStaticPaths;

export const GET: APIRoute<{ readonly report: Report }> = ({ props: { report } }) =>
  new Response(dataPackage(report), { headers: { 'content-type': 'application/json' } });
