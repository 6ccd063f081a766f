import type { APIRoute, GetStaticPaths } from 'astro';
import { dataFiles } from '../../../kit/dataFiles.ts';
import type { Report } from '../../../kit/report.ts';
import { dataTools } from '../../../site/dataTools.ts';
import { givingPaths } from '../../../site/kitPaths.ts';

export const getStaticPaths = (() => givingPaths({ dev: import.meta.env.DEV })) satisfies GetStaticPaths;

export const GET: APIRoute<{ readonly report: Report }> = ({ props: { report } }) =>
  new Response(dataFiles(report, dataTools).reproduceR.text, {
    headers: { 'content-type': 'text/plain; charset=utf-8' },
  });
